using System.Collections.Immutable;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A way of measuring resistance, in ohms.</summary>
/// <param name="Kind">Kind of check that it serves.</param>
/// <param name="Setting">What to set on the instrument, in words.</param>
/// <param name="Ranges">Its ranges, smallest first; the instrument takes the smallest that holds the value.</param>
/// <param name="LeadLowOhms">Least that the leads add, in ohms.</param>
/// <param name="LeadHighOhms">Most that the leads and the touch of their tips add, in ohms.</param>
/// <param name="Seconds">Time that one reading takes once the set-up stands.</param>
public sealed record ResistanceMode(
    string Kind, string Setting, ImmutableArray<MeterRange> Ranges, double LeadLowOhms, double LeadHighOhms, double Seconds)
    : MeterMode(Kind, Setting, "Ω", Seconds)
{
    // A value just above one range may still be shown on it, and one just below may already be shown on the next.
    private const double RangeOverlap = 0.02;

    private const double SecondsAReading = 12;
    private const double SecondsAFourWire = 30;

    /// <summary>Resistance on a hand-held meter of 6000 counts with zeroed leads.</summary>
    /// <remarks>
    /// ±(1 % + 3 digits), from 6 Mohm ±(2 % + 5 digits): the classes that data sheets of common meters state (common practice). Zeroed leads
    /// come back within 0.1 ohm, and touching a terminal adds up to 0.2 ohm.
    /// </remarks>
    public static ResistanceMode HandHeld { get; } = new(
        "resistance",
        "Resistance (ohm), leads zeroed: touch the tips together and note or null what is shown.",
        [
            new(600, 0.1, 0.01, 3), new(6e3, 1, 0.01, 3), new(60e3, 10, 0.01, 3),
            new(600e3, 100, 0.01, 3), new(6e6, 1e3, 0.02, 5), new(60e6, 10e3, 0.02, 5),
        ],
        -0.1,
        0.3,
        SecondsAReading);

    /// <summary>Four-wire measurement with 0.2 to 1 A from a source of at most 24 V and a millivolt meter across the path.</summary>
    /// <remarks>
    /// Current and source as IEC 60204-1 clause 18.2.2 test 1. Up to 1.5 ohm the path drops less than 0.3 V at 0.2 A, so that no junction conducts.
    /// </remarks>
    public static ResistanceMode FourWireSource { get; } = new(
        "four-wire",
        "Four-wire: 0.2 A or more from a current-limited supply (24 V or less) through the path, millivolts read across the path itself.",
        [new(1.5, 0.001, 0.02, 2)],
        0,
        0,
        SecondsAFourWire);

    /// <inheritdoc/>
    public override IEnumerable<double> Steps => Ranges.Take(Ranges.Length - 1).Select(range => (range.FullScale * (1 - RangeOverlap)) - LeadHighOhms);

    /// <inheritdoc/>
    public override ReadingInterval Shown(double low, double high)
    {
        low += LeadLowOhms;
        high += LeadHighOhms;
        var shown = new ReadingInterval(double.PositiveInfinity, double.NegativeInfinity);
        var bottom = double.NegativeInfinity;
        for (var index = 0; index < Ranges.Length; index++)
        {
            var range = Ranges[index];
            var top = range.FullScale * (1 + RangeOverlap);
            if (high >= bottom && low <= top)
            {
                var margin = range.Digits * range.Resolution;
                var least = (Math.Max(low, bottom) * (1 - range.RelativeError)) - margin;
                var most = (Math.Min(high, top) * (1 + range.RelativeError)) + margin;
                shown = new(Math.Min(shown.Low, Math.Max(0, least)), Math.Max(shown.High, most));
            }

            bottom = range.FullScale * (1 - RangeOverlap);
        }

        return new(shown.Low, high > bottom ? ReadingInterval.OverRange : shown.High);
    }
}
