using System.Globalization;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Readings of the diode test, in words and volts.</summary>
public static class DiodeWords
{
    /// <summary>An expectation in volts, in words; millivolts as the meter shows them.</summary>
    public static string Of(ReadingInterval volts) => volts switch
    {
        _ when volts == ReadingInterval.Anything => "cannot tell: this port says nothing",
        { IsOverRangeOnly: true } => "OL (over range)",
        { High: double.PositiveInfinity, Low: <= 0 } => "cannot tell: anything from 0 V to OL",
        { High: double.PositiveInfinity } => $"{Write(volts.Low)} V or more, or OL",
        { Low: <= 0 } => $"{Write(volts.High)} V or less",
        _ => $"{Write(volts.Low)} to {Write(volts.High)} V",
    };

    /// <summary>A value in volts, such as <c>0.512 V</c>; over range as <c>OL</c>.</summary>
    public static string Of(double volts) => double.IsPositiveInfinity(volts) ? "OL" : $"{Write(volts)} V";

    private static string Write(double volts) => volts.ToString("0.000", CultureInfo.InvariantCulture);
}
