using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Readings and expectations of any check, in words and in its unit: the one entry for every face.</summary>
public static class CheckWords
{
    /// <summary>What the machine as designed shows at a check.</summary>
    public static string Expected(Check check) => Interval(check, check.Expectation);

    /// <summary>A reading of a check; over range as <c>OL</c>.</summary>
    public static string Shown(Check check, double value) => check switch
    {
        { Unit: "" } => Answer(value),
        { Unit: PlacedObservation.YesOrNo } => Good(value),
        { Unit: "Ω" } => ReadingWords.Of(value),
        { Kind: "diode-test" } => DiodeWords.Of(value),
        _ when double.IsPositiveInfinity(value) => Beyond(check),
        _ => $"{Write(value, Math.Round)} {check.Unit}",
    };

    /// <summary>What a check may show; limits are rounded inward, so that what looks right is right.</summary>
    public static string Interval(Check check, ReadingInterval interval) => check switch
    {
        { Unit: "Ω" } => ReadingWords.Of(interval),
        { Kind: "diode-test" } => DiodeWords.Of(interval),
        _ when interval == ReadingInterval.Anything => "anything: this says nothing",
        { Unit: "" } => interval.Low < interval.High ? "either" : Answer(interval.Low),
        { Unit: PlacedObservation.YesOrNo } => interval.Low < interval.High ? "either" : Good(interval.Low),
        _ when interval.IsOverRangeOnly => Beyond(check),
        _ when double.IsPositiveInfinity(interval.High) => $"{Write(interval.Low, Math.Ceiling)} {check.Unit} or more, or {Beyond(check)}",
        _ when interval.Low == 0 => $"{Write(interval.High, Math.Floor)} {check.Unit} or less",
        _ => $"{Write(interval.Low, Math.Ceiling)} to {Write(interval.High, Math.Floor)} {check.Unit}",
    };

    // A meter has a range, a stopwatch runs on, and a log or a rule ends.
    private static string Beyond(Check check) => check.Unit switch
    {
        "V" or "A" => "OL (over range)",
        "s" => "never",
        _ => "beyond what can be read",
    };

    private static string Answer(double value) => value switch
    {
        1 => "as it should be",
        0 => "not as it should be",
        _ => $"outcome {Write(value, Math.Round)}",
    };

    private static string Good(double value) => value == 1 ? "good" : "not good";

    // Three digits, as a person reads them off.
    private static string Write(double value, Func<double, double> round)
    {
        var decimals = Math.Abs(value) switch { < 9.995 => 2, < 99.95 => 1, _ => 0 };
        var scale = Math.Pow(10, decimals);
        var rounded = round(value * scale) / scale;
        return (rounded == 0 ? 0 : rounded).ToString("0." + new string('0', decimals), CultureInfo.InvariantCulture);
    }
}
