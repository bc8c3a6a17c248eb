using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests;

public sealed class BudgetSheetTests
{
    private static Outcome<SheetView> Of(params (string Field, string Text)[] typed) => BudgetSheet.Of(typed.ToDictionary(item => item.Field, item => item.Text));

    [Fact]
    public void Causes_are_added_named_and_plotted_and_what_is_missing_is_said()
    {
        var sheet = Of(("travel-x", "300"), ("travel-y", "200"), ("square", "0,1"), ("backlash-y", "0.05"), ("plate", "0.2"), ("limit", "0.11")).Value!;

        Assert.Equal("± 0.1 mm", sheet.Figures.Single(figure => figure.Name == "Y: sum of bounds").Figure.Words);
        Assert.Equal(0.08, sheet.Figures.Single(figure => figure.Name == "Y: root sum square").Figure.Value, 9);
        Assert.Contains("Y keeps the limit even if everything adds up. Most of Y comes from: beam not square to the rails.", sheet.Findings);
        Assert.Contains("Not given, and counted as nothing: Beam's guide straight within, seen from above;", sheet.Remarks[1], StringComparison.Ordinal);
        Assert.Equal(["How far Y may be off over the travel of x", "How far Z may be off over the travel of x"], sheet.Plots.Select(plot => plot.Title));
        Assert.True(sheet.IsFine);
    }

    // √(75² + 40²) = 85, 75 + 40 = 115 µm.
    [Theory]
    [InlineData("0.115", "keeps the limit even if everything adds up", true)]
    [InlineData("0.1", "keeps the limit unless errors add up", false)]
    [InlineData("0.08", "does not keep the limit", false)]
    public void A_limit_is_kept_surely_seldom_broken_or_broken(string limit, string verdict, bool isFine)
    {
        var sheet = Of(("travel-x", "300"), ("travel-y", "200"), ("square", "0.1"), ("backlash-y", "0.08"), ("limit", limit)).Value!;

        Assert.Contains(verdict, sheet.Findings[0], StringComparison.Ordinal);
        Assert.Equal(isFine, sheet.IsFine);
    }

    [Fact]
    public void Half_given_causes_and_nothing_at_all_are_refused()
    {
        Assert.Equal("nothing-known", Of(("travel-x", "300"), ("travel-y", "200")).Diagnostics[0].Rule);
        Assert.Equal("half-given", Of(("travel-x", "300"), ("travel-y", "200"), ("expansion", "23")).Diagnostics[0].Rule);
        Assert.Equal("missing-figure", Of(("travel-x", "300"), ("travel-y", "200"), ("belt-stiffness", "10000")).Diagnostics[0].Rule);
        Assert.Equal("missing-figure", Of(("square", "0.1"), ("travel-y", "200")).Diagnostics[0].Rule);
    }
}
