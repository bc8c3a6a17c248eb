using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Readings that a machine wired with certain mistakes would show: for practice, for tutorials, for tests.</summary>
public static class Rehearsal
{
    private const double DigitsShown = 3;

    /// <summary>Draws a reading for every check of the plan, at random within what the meter may show; equal seeds give equal readings.</summary>
    /// <param name="planned">The machine.</param>
    /// <param name="faults">Indices of the faults that were made, all at once.</param>
    /// <param name="seed">Seed of the random draw.</param>
    /// <returns>Check identifier and the text that a person would type, in the order of the plan.</returns>
    public static IReadOnlyList<(string CheckId, string Text)> Readings(PlannedMachine planned, IReadOnlyList<int> faults, int seed)
    {
        var random = new Random(seed);
        var simulated = planned.Campaign.SimulateTogether(faults);
        return [.. planned.Plan.Checks.Select(check => (planned.Dictionary.Checks[check].Id, Draw(planned.Dictionary.Checks[check].Unit, simulated[check], random)))];
    }

    private static string Draw(string unit, ReadingInterval interval, Random random) =>
        unit.Length == 0 ? (interval.Contains(1) ? "yes" : "no") : Draw(interval, random);

    private static string Draw(ReadingInterval interval, Random random)
    {
        if (interval.IsOverRangeOnly || (double.IsPositiveInfinity(interval.High) && random.NextDouble() < 0.5))
            return "OL";
        var low = Math.Max(interval.Low, 0.01);
        var high = double.IsPositiveInfinity(interval.High) ? Math.Max(low * 2, 60e6) : Math.Max(interval.High, low);
        var value = low * Math.Pow(high / low, 0.25 + (0.5 * random.NextDouble()));
        return Shown(Math.Clamp(value, interval.Low, high), interval);
    }

    private static string Shown(double ohms, ReadingInterval interval)
    {
        var decimals = ohms < 1 ? 2 : Math.Max(0, (int)(DigitsShown - Math.Ceiling(Math.Log10(ohms))));
        var scale = ohms >= 1000 ? Math.Pow(10, Math.Floor(Math.Log10(ohms)) - DigitsShown + 1) : Math.Pow(10, -decimals);
        var rounded = Math.Round(ohms / scale) * scale;
        return (interval.Contains(rounded) ? rounded : ohms).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);
    }
}
