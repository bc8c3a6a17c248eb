using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Readings in ohms, in words and units.</summary>
public static class ReadingWords
{
    /// <summary>A value in ohms with three digits and a prefix, such as <c>4.70 kΩ</c>; over range as <c>OL</c>.</summary>
    public static string Of(double ohms) => ohms switch
    {
        double.PositiveInfinity => "OL",
        >= 999.5e3 => Write(ohms / 1e6, "MΩ"),
        >= 999.5 => Write(ohms / 1e3, "kΩ"),
        >= 0.9995 or 0 => Write(ohms, "Ω"),
        _ => Write(ohms * 1e3, "mΩ"),
    };

    /// <summary>An expectation in ohms, in words.</summary>
    public static string Of(ReadingInterval interval) => interval switch
    {
        _ when interval == ReadingInterval.Anything => "anything: this port says nothing",
        { IsOverRangeOnly: true } => "OL (over range)",
        { High: double.PositiveInfinity, Low: <= 0 } => "anything from 0 Ω to OL",
        { High: double.PositiveInfinity } => $"more than {Of(interval.Low)}, or OL",
        { Low: <= 0.05 } => $"{Of(interval.High)} or less",
        _ => $"{Of(interval.Low)} to {Of(interval.High)}",
    };

    private static string Write(double value, string unit)
    {
        var format = Math.Abs(value) switch { < 9.995 => "0.00", < 99.95 => "0.0", _ => "0" };
        return value.ToString(format, CultureInfo.InvariantCulture) + " " + unit;
    }
}
