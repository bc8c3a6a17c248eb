using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What a voltmeter may show for a computed voltage.</summary>
/// <remarks>
/// Extra-low voltage: supplies within 2 % (trimmed), loads and leads within their tolerances, and the meter's ±(0.8 % + 3 digits) are taken together
/// as 5 % and 0.25 V. Mains: 10 % of EN 50160 and the meter, 12 % and 2 V. Common practice; the width is chosen, not proved, so an interval here
/// tells mistakes apart only when two of them do not meet.
/// </remarks>
internal static class LiveExpectation
{
    /// <summary>The interval of readings.</summary>
    public static ReadingInterval Of(double volts, bool isAlternating)
    {
        var margin = isAlternating ? (0.12 * Math.Abs(volts)) + 2 : (0.05 * Math.Abs(volts)) + 0.25;
        return new(isAlternating ? Math.Max(0, volts - margin) : volts - margin, volts + margin);
    }
}
