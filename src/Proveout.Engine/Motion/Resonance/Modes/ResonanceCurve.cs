namespace Proveout.Engine.Motion;

/// <summary>
/// Power of a resonance over frequency as a Hann window shows it: the curve convolved with the window's own spectrum, so that a narrow peak is not taken for a damped one.
/// Acceleration over force: -r² / (1 - r² + 2 i zeta r). Acceleration over acceleration of the drive: (1 + 2 i zeta r) / the same (L. Meirovitch, Fundamentals of Vibrations, chapter 3; from memory).
/// What other resonances add near it is nearly a real number (D. J. Ewins, Modal Testing, residual terms of a single-mode fit; from memory).
/// </summary>
/// <param name="binHertz">Distance of two bins.</param>
/// <param name="excitation">Which of the two.</param>
internal sealed class ResonanceCurve(double binHertz, Excitation excitation)
{
    private const int StepsByBin = 4;
    private const int ReachBins = 3;

    private static readonly (double Offset, double Weight)[] Window = WindowPower();

    /// <summary>The curve at a frequency, 1 at the natural frequency when nothing is added.</summary>
    /// <param name="hertz">Where.</param>
    /// <param name="natural">Undamped natural frequency.</param>
    /// <param name="dampingRatio">Damping ratio.</param>
    /// <param name="added">What other resonances add, as a share of the amplitude at the natural frequency.</param>
    public double At(double hertz, double natural, double dampingRatio, double added)
    {
        // Where the peak is much wider than the window, the window changes nothing.
        if (2 * dampingRatio * natural > 40 * binHertz)
            return Plain(hertz, natural, dampingRatio, added);
        var sum = 0.0;
        foreach (var (offset, weight) in Window)
            sum += weight * Plain(Math.Abs(hertz + (offset * binHertz)), natural, dampingRatio, added);
        return sum;
    }

    private double Plain(double hertz, double natural, double dampingRatio, double added)
    {
        var ratio = hertz / natural;
        var twice = 2 * dampingRatio;
        var (square, below) = (ratio * ratio, 1 - (ratio * ratio));
        var rest = (below * below) + (twice * twice * square);
        // Numerator times the conjugate of the denominator, over its square.
        var (real, imaginary) = excitation == Excitation.Drive
            ? ((below + (twice * twice * square)) / rest, ((twice * ratio * below) - (twice * ratio)) / rest)
            : (-square * below / rest, square * twice * ratio / rest);
        var scale = excitation == Excitation.Drive ? twice / Math.Sqrt(1 + (twice * twice)) : twice;
        var (along, across) = ((scale * real) + added, scale * imaginary);
        return (along * along) + (across * across);
    }

    // |W|² of the periodic Hann window at x bins from its middle: (sinc(x) / (1 - x²))².
    private static (double, double)[] WindowPower()
    {
        double[] offsets = [.. Enumerable.Range(-ReachBins * StepsByBin, (2 * ReachBins * StepsByBin) + 1).Select(step => step / (double)StepsByBin)];
        double[] weights = [.. offsets.Select(offset => Math.Pow(Math.Abs(offset) == 1 ? 0.5 : offset == 0 ? 1 : Math.Sin(Math.PI * offset) / (Math.PI * offset) / (1 - (offset * offset)), 2))];
        var sum = weights.Sum();
        return [.. offsets.Zip(weights, (offset, weight) => (offset, weight / sum))];
    }
}
