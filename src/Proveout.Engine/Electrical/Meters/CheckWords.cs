using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Readings and expectations of any check, in words and in its unit: the one entry for every face.</summary>
public static class CheckWords
{
    /// <summary>What the machine as designed shows at a check.</summary>
    public static string Expected(Check check) => Interval(check.Unit, check.Expectation);

    /// <summary>A reading of a check; over range as <c>OL</c>.</summary>
    public static string Shown(Check check, double value) => Value(check.Unit, value);

    /// <summary>An interval in a unit.</summary>
    public static string Interval(string unit, ReadingInterval interval) => unit switch
    {
        "Ω" => ReadingWords.Of(interval),
        "V" => DiodeWords.Of(interval),
        _ when interval == ReadingInterval.Anything => "anything: this says nothing",
        _ when interval.IsOverRangeOnly => "OL (over range)",
        _ when double.IsPositiveInfinity(interval.High) => $"{Plain(interval.Low)} {unit} or more, or OL",
        _ => $"{Plain(interval.Low)} to {Plain(interval.High)} {unit}",
    };

    /// <summary>A value in a unit; over range as <c>OL</c>.</summary>
    public static string Value(string unit, double value) => unit switch
    {
        _ when double.IsPositiveInfinity(value) => "OL",
        "Ω" => ReadingWords.Of(value),
        "V" => DiodeWords.Of(value),
        _ => $"{Plain(value)} {unit}",
    };

    private static string Plain(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
