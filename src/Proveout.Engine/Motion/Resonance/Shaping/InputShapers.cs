namespace Proveout.Engine.Motion;

/// <summary>Makes the shapers of the literature.</summary>
public static class InputShapers
{
    /// <summary>Tolerated vibration that the literature usually takes: 5 %.</summary>
    public const double UsualTolerance = 0.05;

    /// <summary>Strongest damping that a shaper is made for; beyond it there is nothing to shape.</summary>
    public const double MostDamping = 0.3;

    /// <summary>A shaper for a mode.</summary>
    /// <param name="kind">Which one.</param>
    /// <param name="hertz">Undamped natural frequency.</param>
    /// <param name="dampingRatio">Damping ratio, from 0 to <see cref="MostDamping"/>.</param>
    /// <param name="tolerance">Tolerated vibration of the kinds that tolerate some, above 0 and at most 0.25.</param>
    public static InputShaper Of(ShaperKind kind, double hertz, double dampingRatio, double tolerance = UsualTolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(hertz);
        ArgumentOutOfRangeException.ThrowIfNegative(dampingRatio);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dampingRatio, MostDamping);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tolerance, 0.25);
        return kind switch
        {
            // Singer and Seering 1990: binomial shares, so many zeros on one another as impulses after the first.
            ShaperKind.ZeroVibration => Weighted(kind, hertz, dampingRatio, 0, [1, 1]),
            ShaperKind.ZeroVibrationDerivative => Weighted(kind, hertz, dampingRatio, 0, [1, 2, 1]),
            ShaperKind.ZeroVibrationSecondDerivative => Weighted(kind, hertz, dampingRatio, 0, [1, 3, 3, 1]),
            ShaperKind.ExtraInsensitive => ExtraInsensitiveShaper.Of(hertz, dampingRatio, tolerance),
            ShaperKind.TwoHump => Weighted(kind, hertz, dampingRatio, tolerance, TwoHump(tolerance)),
            ShaperKind.ThreeHump => Weighted(kind, hertz, dampingRatio, tolerance, ThreeHump(tolerance)),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
    }

    /// <summary>All kinds for one mode, shortest first.</summary>
    public static IReadOnlyList<InputShaper> All(double hertz, double dampingRatio, double tolerance = UsualTolerance) =>
        [.. Enum.GetValues<ShaperKind>().Select(kind => Of(kind, hertz, dampingRatio, tolerance)).OrderBy(shaper => shaper.DurationSeconds)];

    /// <summary>
    /// Impulses half a damped period apart, each weighted by what the vibration of the first has lost until then, K = exp(-zeta pi / sqrt(1 - zeta²)). Exact for the binomial kinds;
    /// for the humped ones, whose closed form is of the undamped mode, an approximation of ours that keeps their zero or tolerance at the design frequency.
    /// </summary>
    internal static InputShaper Weighted(ShaperKind kind, double hertz, double dampingRatio, double tolerance, double[] undamped)
    {
        var root = Math.Sqrt(1 - (dampingRatio * dampingRatio));
        var lost = Math.Exp(-dampingRatio * Math.PI / root);
        var half = 0.5 / (hertz * root);
        double[] shares = [.. undamped.Select((share, index) => share * Math.Pow(lost, index))];
        var sum = shares.Sum();
        return new InputShaper(kind, hertz, dampingRatio, tolerance, [.. shares.Select((share, index) => new ShaperImpulse(share / sum, index * half))]);
    }

    // W. Singhose, S. Derezinski and N. Singer, Extra-insensitive input shapers for controlling flexible spacecraft, J. Guidance, Control, and Dynamics 19 (1996) 385-391 (from memory; the tests prove
    // zero and humps from the definition).
    private static double[] TwoHump(double tolerance)
    {
        var square = tolerance * tolerance;
        var x = Math.Cbrt(square * (Math.Sqrt(1 - square) + 1));
        var outer = ((3 * x * x) + (2 * x) + (3 * square)) / (16 * x);
        return [outer, 0.5 - outer, 0.5 - outer, outer];
    }

    private static double[] ThreeHump(double tolerance)
    {
        var outer = (1 + (3 * tolerance) + (2 * Math.Sqrt(2 * ((tolerance * tolerance) + tolerance)))) / 16;
        var next = (1 - tolerance) / 4;
        return [outer, next, 1 - (2 * (outer + next)), next, outer];
    }
}
