using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>How far the true resistance at a check must lie from the sound one before the meter tells, in ohms.</summary>
/// <remarks>
/// What a meter may show widens with both limits of the true value (<see cref="MeterMode.Shown"/>). So a lower limit that shows too much with
/// any upper limit does so with the true one, and an upper limit that shows too little with any lower limit does so too. In the other direction it
/// may always show what it may show of the lower limit alone, or of the upper.
/// </remarks>
internal readonly record struct CheckLimits(double SurelyTooHigh, double SurelyTooLow, double NotTooHigh, double NotTooLow)
{
    private const double Least = 1e-6;
    private const double Most = 1e9;
    private const int Halvings = 60;

    /// <summary>The limits of a check.</summary>
    public static CheckLimits Of(CandidateCheck candidate) => Of(candidate.Mode, candidate.Check.Expectation);

    /// <summary>The limits of a meter for what it may show of the sound machine.</summary>
    public static CheckLimits Of(MeterMode mode, ReadingInterval expected)
    {
        return new(
            Surely(TooHigh, fromAbove: true),
            Surely(TooLow, fromAbove: false),
            double.IsPositiveInfinity(expected.High) ? double.PositiveInfinity : NotTooHighBelow(mode, expected.High),
            Last(value => mode.Shown(value, value).High < expected.Low, 0, Most).Not);

        bool TooHigh(double value) => mode.Shown(value, double.PositiveInfinity).Low > expected.High;

        bool TooLow(double value) => mode.Shown(0, value).High < expected.Low;
    }

    // Up to a range that a meter may go over to, what it shows at least rises with the value; there it may fall.
    private static double NotTooHighBelow(MeterMode mode, double most)
    {
        var from = 0.0;
        foreach (var step in mode.Steps.Append(Most))
        {
            if (step <= from)
                continue;
            if (mode.Shown(Before(step), Before(step)).Low > most)
                return Last(value => mode.Shown(value, value).Low <= most, from, step).Holds;
            from = step;
        }

        return double.PositiveInfinity;
    }

    // The last value that holds and the first that does not, of a property that does up to some value; both zero when it never does.
    private static (double Holds, double Not) Last(Func<double, bool> holds, double from, double to)
    {
        if (!holds(from))
            return (from, from);
        var (yes, no) = (from, to);
        for (var turn = 0; turn < Halvings; turn++)
        {
            var middle = yes < Least ? Math.Max(Least, (yes + no) / 1e3) : Math.Sqrt(yes * no);
            (yes, no) = holds(middle) ? (middle, no) : (yes, middle);
        }

        return (yes, no);
    }

    private static double Before(double value) => value * (1 - 1e-12);

    // The least value that holds, or the greatest; infinite or zero when none does. Both properties hold from some value on.
    private static double Surely(Func<double, bool> holds, bool fromAbove)
    {
        var (yes, no) = fromAbove ? (Most, Least) : (Least, Most);
        if (!holds(yes))
            return fromAbove ? double.PositiveInfinity : 0;
        if (holds(no))
            return no;
        for (var turn = 0; turn < Halvings; turn++)
        {
            var middle = Math.Sqrt(yes * no);
            (yes, no) = holds(middle) ? (middle, no) : (yes, middle);
        }

        return yes;
    }
}
