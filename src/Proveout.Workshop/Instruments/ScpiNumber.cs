using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Values as an instrument answers them: decimal numeric response data of IEEE 488.2 (NR1, NR2, NR3).</summary>
internal static class ScpiNumber
{
    // SCPI-1999, volume 1, 7.2.1: infinity is 9.9E+37, minus infinity its negative, and "not a number" is 9.91E+37.
    private const double Infinity = 9.9e37;
    private const double NotANumber = 9.91e37;

    /// <summary>The value; infinite over range; null when it is no value.</summary>
    public static double? TryRead(string answer)
    {
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        if (!double.TryParse(answer.Trim(), Style, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            return null;
        if (IsAbout(value, Infinity))
            return double.PositiveInfinity;
        return IsAbout(value, NotANumber) || Math.Abs(value) >= Infinity * 0.999 ? null : value;
    }

    // Instruments write these with more or fewer digits.
    private static bool IsAbout(double value, double other) => Math.Abs(value - other) < other * 1e-4;
}
