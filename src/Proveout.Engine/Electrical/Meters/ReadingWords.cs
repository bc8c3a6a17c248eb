using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Readings in ohms, in words and units.</summary>
public static class ReadingWords
{
    /// <summary>A value in ohms with three digits and a prefix, such as <c>4.70 kΩ</c>; over range as <c>OL</c>.</summary>
    public static string Of(double ohms) => Of(ohms, Math.Round);

    /// <summary>An expectation in ohms, in words; its limits are rounded inward, so that what looks right is right.</summary>
    public static string Of(ReadingInterval interval) => interval switch
    {
        _ when interval == ReadingInterval.Anything => "anything: this port says nothing",
        { IsOverRangeOnly: true } => "OL (over range)",
        { High: double.PositiveInfinity, Low: <= 0 } => "anything from 0 Ω to OL",
        { High: double.PositiveInfinity } => $"more than {Of(interval.Low, Math.Ceiling)}, or OL",
        { Low: <= 0.05 } => $"{Of(interval.High, Math.Floor)} or less",
        _ => $"{Of(interval.Low, Math.Ceiling)} to {Of(interval.High, Math.Floor)}",
    };

    private static string Of(double ohms, Func<double, double> round) => ohms switch
    {
        double.PositiveInfinity => "OL",
        >= 999.5e3 => Write(ohms / 1e6, "MΩ", round),
        >= 999.5 => Write(ohms / 1e3, "kΩ", round),
        >= 0.0995 or 0 => Write(ohms, "Ω", round),
        _ => Write(ohms * 1e3, "mΩ", round),
    };

    private static string Write(double value, string unit, Func<double, double> round)
    {
        var decimals = Math.Abs(value) switch { < 9.995 => 2, < 99.95 => 1, _ => 0 };
        var scale = Math.Pow(10, decimals);
        return (round(value * scale) / scale).ToString("F" + decimals, CultureInfo.InvariantCulture) + " " + unit;
    }
}
