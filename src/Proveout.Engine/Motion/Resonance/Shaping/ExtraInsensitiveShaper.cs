using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>
/// The extra-insensitive shaper: the tolerance at the design frequency, nothing on both sides of it, the last impulse a damped period after the first
/// (W. Singhose, W. Seering and N. Singer, Residual vibration reduction using vector diagrams to generate shaped inputs, ASME J. Mechanical Design 116 (1994) 654-659; from memory).
/// Closed form without damping; with it the same conditions are solved by Newton's method, from weaker to stronger damping. Where damping and tolerance are both so large that the conditions cannot be
/// met, the closed form weighted by the damping, as the kinds with humps are.
/// </summary>
internal static class ExtraInsensitiveShaper
{
    private const double DampingStep = 0.02;
    private const int MostSteps = 40;
    private const double Closed = 1e-13;
    private const double Nudge = 1e-7;

    public static InputShaper Of(double hertz, double dampingRatio, double tolerance)
    {
        double[] undamped = [(1 + tolerance) / 4, (1 - tolerance) / 2, (1 + tolerance) / 4];
        if (dampingRatio == 0)
            return InputShapers.Weighted(ShaperKind.ExtraInsensitive, hertz, 0, tolerance, undamped);
        // Unknowns for 1 Hz: first and second share, time of the second, the two frequencies without vibration.
        var zero = Math.Acos(-(1 - tolerance) / (1 + tolerance)) / Math.PI;
        double[] unknowns = [undamped[0], undamped[1], 0.5, zero, 2 - zero];
        var steps = (int)Math.Ceiling(dampingRatio / DampingStep);
        for (var step = 1; step <= steps; step++)
        {
            if (Solve(unknowns, dampingRatio * step / steps, tolerance) is not { } solved)
                return InputShapers.Weighted(ShaperKind.ExtraInsensitive, hertz, dampingRatio, tolerance, undamped);
            unknowns = solved;
        }

        return Shaper(unknowns, dampingRatio, tolerance, hertz);
    }

    // Null where strong damping leaves no second frequency without vibration.
    private static double[]? Solve(double[] unknowns, double dampingRatio, double tolerance)
    {
        for (var step = 0; step < MostSteps; step++)
        {
            var off = Conditions(unknowns, dampingRatio, tolerance);
            if (off.Max(Math.Abs) < Closed)
                break;
            if (LeastSquares.Fit(Slopes(unknowns, dampingRatio, tolerance), off) is not { } fit)
                break;
            unknowns = [.. unknowns.Zip(fit.Values, (value, change) => value - change)];
        }

        var isFrequency = unknowns[3] > 0 && unknowns[4] > unknowns[3];
        return isFrequency && Conditions(unknowns, dampingRatio, tolerance).Max(Math.Abs) < 1e-9 ? unknowns : null;
    }

    private static List<double[]> Slopes(double[] unknowns, double dampingRatio, double tolerance)
    {
        List<double[]> rows = [.. Enumerable.Range(0, unknowns.Length).Select(_ => new double[unknowns.Length])];
        for (var column = 0; column < unknowns.Length; column++)
        {
            double[] above = [.. unknowns];
            double[] below = [.. unknowns];
            (above[column], below[column]) = (above[column] + Nudge, below[column] - Nudge);
            var (high, low) = (Conditions(above, dampingRatio, tolerance), Conditions(below, dampingRatio, tolerance));
            for (var row = 0; row < unknowns.Length; row++)
                rows[row][column] = (high[row] - low[row]) / (2 * Nudge);
        }

        return rows;
    }

    // Both parts of the vibration vanish at two frequencies; at the design frequency its square is the tolerance's.
    private static double[] Conditions(double[] unknowns, double dampingRatio, double tolerance)
    {
        var shaper = Shaper(unknowns, dampingRatio, tolerance, 1);
        var (lowCosine, lowSine) = Parts(shaper, unknowns[3]);
        var (highCosine, highSine) = Parts(shaper, unknowns[4]);
        var (cosine, sine) = Parts(shaper, 1);
        return [lowCosine, lowSine, highCosine, highSine, (cosine * cosine) + (sine * sine) - (tolerance * tolerance)];
    }

    private static (double Cosine, double Sine) Parts(InputShaper shaper, double hertz)
    {
        var turn = 2 * Math.PI * hertz;
        var (decay, damped) = (shaper.DampingRatio * turn, turn * Math.Sqrt(1 - (shaper.DampingRatio * shaper.DampingRatio)));
        return (
            shaper.Impulses.Sum(impulse => impulse.Share * Math.Exp(decay * (impulse.Seconds - shaper.DurationSeconds)) * Math.Cos(damped * impulse.Seconds)),
            shaper.Impulses.Sum(impulse => impulse.Share * Math.Exp(decay * (impulse.Seconds - shaper.DurationSeconds)) * Math.Sin(damped * impulse.Seconds)));
    }

    private static InputShaper Shaper(double[] unknowns, double dampingRatio, double tolerance, double hertz) => new(
        ShaperKind.ExtraInsensitive,
        hertz,
        dampingRatio,
        tolerance,
        [
            new(unknowns[0], 0),
            new(unknowns[1], unknowns[2] / hertz),
            new(1 - unknowns[0] - unknowns[1], 1 / (hertz * Math.Sqrt(1 - (dampingRatio * dampingRatio)))),
        ]);
}
