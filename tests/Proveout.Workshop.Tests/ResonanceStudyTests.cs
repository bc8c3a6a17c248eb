using System.Globalization;
using System.Text;

namespace Proveout.Workshop.Tests;

public sealed class ResonanceStudyTests
{
    [Fact]
    public void Two_axes_shaken_by_blows_give_resonances_shapers_and_plots()
    {
        var view = Of([Ringing("x", 47, 0.06), Ringing("y", 62, 0.04)], [], [("excited-by", "blows")]);
        Assert.Equal(["x", "y"], view.Directions.Select(direction => direction.Name));
        foreach (var (direction, hertz, damping) in view.Directions.Zip([47.0, 62], [0.06, 0.04]))
        {
            var mode = direction.Modes[0];
            Assert.Equal(hertz, mode.Hertz.Value, mode.Hertz.Expanded + 0.05);
            Assert.Equal(damping, mode.DampingRatio!.Value, mode.DampingRatio.Expanded + 0.001);
            Assert.Equal(6, direction.Shapers.Count);
            Assert.Single(direction.Shapers, shaper => shaper.IsBest);
            Assert.Equal(2, direction.Plots.Count);
            Assert.All(direction.Plots, plot => Assert.NotEmpty(plot.Description));
        }

        Assert.True(view.Sheet.IsFine);
        Assert.Contains(view.Sheet.Findings, finding => finding.StartsWith("Both axes together: corners keep the error up to", StringComparison.Ordinal));
        Assert.Contains(view.Sheet.Figures, figure => figure.Name == "Axis x: resonance");
    }

    [Fact]
    public void The_reason_names_the_gentler_shaper_that_would_leave_too_much()
    {
        var view = Of([Ringing("x", 47, 0.06)], [], [("excited-by", "blows")]);
        var advice = Assert.Single(view.Directions).Advice;
        Assert.Contains("Axis x: use ", advice, StringComparison.Ordinal);
        Assert.Contains("which rounds them less, would leave up to", advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_resonance_that_moved_down_and_grew_is_told_with_where_to_look()
    {
        var view = Of([Ringing("x", 52, 0.05)], [Ringing("x", 44, 0.03, 2)], [("excited-by", "blows")]);
        var change = Assert.Single(view.Directions[0].Changes);
        Assert.Equal(("lower", "grown"), (change.Place, change.Strength));
        Assert.Contains("see screws of frame and gantry", change.Sentence, StringComparison.Ordinal);
        Assert.InRange(change.RiseHertz!.Value, -8.3, -7.7);
        Assert.False(view.Sheet.IsFine);
        // The machine as it is now is shaped.
        Assert.Equal(44, view.Directions[0].Modes[0].Hertz.Value, 0.5);
    }

    [Fact]
    public void What_did_not_change_is_not_called_changed()
    {
        var view = Of([Ringing("x", 52, 0.05)], [Ringing("x", 52, 0.05, seed: 9)], [("excited-by", "blows")]);
        Assert.Equal("same", Assert.Single(view.Directions[0].Changes).Place);
    }

    [Theory]
    [InlineData("number-of-recordings", 0, 0)]
    [InlineData("number-of-recordings", 3, 0)]
    [InlineData("recordings-after", 2, 1)]
    [InlineData("no-such-choice", 1, 0, "excited-by", "earthquake")]
    [InlineData("out-of-range", 1, 0, "tolerance", "80")]
    [InlineData("not-a-figure", 1, 0, "corner-error", "little")]
    [InlineData("no-band", 1, 0, "lowest", "90", "highest", "50")]
    public void What_is_wrong_is_said(string rule, int before, int after, params string[] typed)
    {
        var texts = typed.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1]);
        var answer = ResonanceStudy.Of(new ResonanceRequest([.. Enumerable.Repeat(Ringing("x", 50, 0.05), before)], [.. Enumerable.Repeat(Ringing("x", 50, 0.05), after)], texts, texts));
        Assert.Contains(answer.Diagnostics, diagnostic => diagnostic.Rule == rule && diagnostic.Mend.Length > 0);
    }

    [Fact]
    public void A_file_that_cannot_be_opened_is_told_by_its_name() =>
        Assert.Equal("unreadable-file", Assert.Single(ResonanceStudy.Of(new ResonanceRequest([new ShakeFile("gone.csv", () => throw new FileNotFoundException())], [], new Dictionary<string, string>(), new Dictionary<string, string>())).Diagnostics).Rule);

    internal static ShakeFile Ringing(string axis, double hertz, double damping, double strength = 1, int seed = 1)
    {
        var bytes = Encoding.UTF8.GetBytes(Table(axis, hertz, damping, strength, seed));
        return new ShakeFile($"{axis}.csv", () => new MemoryStream(bytes));
    }

    /// <summary>Twelve seconds with four blows, at 1 kHz.</summary>
    internal static string Table(string axis, double hertz, double damping, double strength = 1, int seed = 1)
    {
        var random = new Random(seed);
        var turn = 2 * Math.PI * hertz;
        var text = new StringBuilder($"time [s];{axis} [m/s²]\n");
        for (var row = 0; row < 12_000; row++)
        {
            var sample = 0.02 * (random.NextDouble() - 0.5);
            foreach (var blow in new[] { 1.0, 3.5, 6, 8.5 })
                if (row / 1000.0 - blow is >= 0 and var time)
                    sample += strength * 5 * Math.Exp(-damping * turn * time) * Math.Sin(turn * Math.Sqrt(1 - (damping * damping)) * time);
            text.Append(CultureInfo.InvariantCulture, $"{row / 1000.0:0.000};{sample:0.00000}\n");
        }

        return text.ToString();
    }

    private static ResonanceStudyView Of(ShakeFile[] before, ShakeFile[] after, (string Name, string Text)[] chosen, params (string Name, string Text)[] typed)
    {
        var answer = ResonanceStudy.Of(new ResonanceRequest(before, after, chosen.ToDictionary(item => item.Name, item => item.Text), typed.ToDictionary(item => item.Name, item => item.Text)));
        Assert.Empty(answer.Diagnostics);
        return answer.Value!;
    }
}
