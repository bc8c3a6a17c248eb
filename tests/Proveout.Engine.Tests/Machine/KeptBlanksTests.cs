using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>Where a line may not break.</summary>
public sealed class KeptBlanksTests
{
    [Theory]
    [InlineData("more than 9.75 MΩ, or OL", "more than 9.75_MΩ, or OL")]
    [InlineData("about 77 min: set-ups 9.1 min", "about 77_min: set-ups 9.1_min")]
    [InlineData("0.75 mm² at 230 V; 5 Ω/km; 2 %", "0.75_mm² at 230_V; 5_Ω/km; 2_%")]
    public void A_figure_and_its_unit_stay_together(string text, string kept) => Assert.Equal(kept, KeptBlanks.BeforeUnits(text).Replace(KeptBlanks.Blank, '_'));

    [Theory]
    [InlineData("575 lead moves, 9 meter changes")]
    [InlineData("of 2851 at most; 3 heaters; 4 Visits; m 5")]
    public void A_word_after_a_figure_may_begin_a_line(string text) => Assert.Equal(text, KeptBlanks.BeforeUnits(text));
}
