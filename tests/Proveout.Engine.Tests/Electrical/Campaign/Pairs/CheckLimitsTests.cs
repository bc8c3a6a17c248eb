using Proveout.Engine.Electrical;

namespace Proveout.Engine.Tests.Electrical.Campaign.Pairs;

/// <summary>Resistances at which a meter tells for sure, or for sure not, against all that it may show.</summary>
public sealed class CheckLimitsTests
{
    public static TheoryData<string> Kinds => new("resistance", "four-wire", "insulation-test");

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_verdict_told_by_limits_is_that_of_all_that_the_meter_may_show(string kind)
    {
        var (mode, random) = (MeterMode.OfKind(kind), new Random(20261129));
        var (told, close) = (0, 0);
        for (var round = 0; round < 500; round++)
        {
            var (goodLow, goodHigh) = Limits(random, Ohms(random));
            var expected = mode.Shown(goodLow, goodHigh);
            var limits = CheckLimits.Of(mode, expected);
            for (var trial = 0; trial < 100; trial++)
            {
                // Half of them where a verdict changes, and where the meter changes its range.
                double[] edges = [limits.NotTooHigh, limits.NotTooLow, limits.SurelyTooHigh, limits.SurelyTooLow, .. mode.Steps];
                var near = edges[random.Next(edges.Length)];
                var centre = trial % 2 == 0 || near is <= 0 or > 1e9 ? Ohms(random) : near * (1 + ((random.NextDouble() - 0.5) / 50));
                var (low, high) = Limits(random, centre);
                var isCaught = mode.Shown(low, high).IsDisjointFrom(expected);
                if (low <= limits.NotTooHigh && high >= limits.NotTooLow)
                    Assert.False(isCaught, $"{low} to {high} beside {goodLow} to {goodHigh}");
                else if (low >= limits.SurelyTooHigh || high <= limits.SurelyTooLow)
                    Assert.True(isCaught, $"{low} to {high} beside {goodLow} to {goodHigh}");
                else
                    close++;
                told++;
            }
        }

        Assert.True(close < told / 4, $"{close} of {told} verdicts were not told by the limits.");
    }

    private static double Ohms(Random random) => Math.Pow(10, -3 + (11 * random.NextDouble()));

    private static (double Low, double High) Limits(Random random, double ohms) => random.Next(8) switch
    {
        0 => (ohms, ohms),
        1 => (ohms, double.PositiveInfinity),
        _ => (ohms, ohms * Math.Pow(10, random.NextDouble() * random.NextDouble())),
    };
}
