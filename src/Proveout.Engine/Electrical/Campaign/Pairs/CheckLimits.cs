namespace Proveout.Engine.Electrical;

/// <summary>How far the true resistance at a check must lie from the sound one before the meter tells, in ohms.</summary>
/// <remarks>
/// What a meter may show widens with both limits of the true value (<see cref="MeterMode.Shown"/>). So a lower limit that shows too much with
/// any upper limit does so with the true one, and an upper limit that shows too little with any lower limit does so too. In the other direction a
/// meter may always show what it would show without any error.
/// </remarks>
internal readonly record struct CheckLimits(double SurelyTooHigh, double SurelyTooLow, double NotTooHigh, double NotTooLow)
{
    private const double Least = 1e-6;
    private const double Most = 1e9;
    private const int Halvings = 60;

    /// <summary>The limits of a check.</summary>
    public static CheckLimits Of(CandidateCheck candidate)
    {
        var (mode, expected) = (candidate.Mode, candidate.Check.Expectation);
        var (leadLow, leadHigh) = mode is ResistanceMode ohms ? (ohms.LeadLowOhms, ohms.LeadHighOhms) : (0, 0);
        return new(
            Surely(TooHigh, fromAbove: true),
            Surely(TooLow, fromAbove: false),
            expected.High - leadLow,
            double.IsPositiveInfinity(expected.Low) ? double.PositiveInfinity : expected.Low - leadHigh);

        bool TooHigh(double value) => mode.Shown(value, double.PositiveInfinity).Low > expected.High;

        bool TooLow(double value) => mode.Shown(0, value).High < expected.Low;
    }

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
