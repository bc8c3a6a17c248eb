using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>Fits the curve of a single degree of freedom over a level ground to a peak, with what its neighbours add.</summary>
/// <param name="Hertz">Undamped natural frequency.</param>
/// <param name="DampingRatio">Damping ratio.</param>
/// <param name="Height">Density at the natural frequency without the ground.</param>
internal sealed record ResonanceFit(Uncertain Hertz, Uncertain DampingRatio, Uncertain Height)
{
    private const int MostSteps = 60;
    private const double Nudge = 1e-5;
    private const double LargestStep = 0.3;
    private const double LeastDamping = 1e-4;
    private const double MostDamping = 0.7;

    // Neighbouring bins of a Hann window share (2/3)² and (1/6)² of their scatter (Harris 1978): 1 + 2 (4/9 + 1/36).
    private const double SharedScatter = 1.9444;

    // Reach of the fit in half-power widths from the top.
    private const double Reach = 3;
    private const int LeastBins = 7;
    private const int LeastBinsForOthers = 15;

    // More than a third of the height from others is no single resonance.
    private const double MostAdded = 0.35;

    /// <summary>The fit; null when there is none.</summary>
    /// <param name="density">The spectrum.</param>
    /// <param name="peak">The peak.</param>
    /// <param name="excitation">Which curve.</param>
    public static ResonanceFit? Of(PowerDensity density, PeakPlace peak, Excitation excitation)
    {
        var width = HalfPowerBins(density, peak);
        var reach = (int)Math.Max(LeastBins / 2, Math.Ceiling(Reach * width));
        var (from, to) = (Math.Max(peak.From, peak.Bin - reach), Math.Min(peak.To, peak.Bin + reach));
        if (to - from + 1 < LeastBins)
            (from, to) = (peak.Bin - (LeastBins / 2), peak.Bin + (LeastBins / 2));
        if (from < 1 || to >= density.Values.Count)
            return null;
        // Unknowns as logarithms, so that none turns negative: frequency, damping ratio, height, ground; then what others add, as it is.
        var start = Math.Max(0.3, Math.Sqrt(Math.Max(0, (width * width) - 2)));
        double[] unknowns =
        [
            Math.Log(peak.Bin * density.BinHertz),
            Math.Log(Math.Clamp(start / (2.0 * peak.Bin), 2 * LeastDamping, 0.3)),
            Math.Log(density.Values[peak.Bin]),
            Math.Log(density.Values[peak.Bin] / Math.Max(4, 4 * peak.Excess)),
        ];
        var curve = new ResonanceCurve(density.BinHertz, excitation);
        // Alone first; then with what others add, where the peak is wide enough to show it.
        return Refine(unknowns, density, from, to, curve) is not { } alone ? null
            : to - from + 1 < LeastBinsForOthers ? alone
            : Refine([Math.Log(alone.Hertz.Value), Math.Log(alone.DampingRatio.Value), Math.Log(alone.Height.Value), unknowns[3], 0], density, from, to, curve) ?? alone;
    }

    /// <summary>Width at half the height of a peak, in bins.</summary>
    public static double HalfPowerBins(PowerDensity density, PeakPlace peak)
    {
        var half = density.Values[peak.Bin] / 2;
        var (left, right) = (peak.Bin, peak.Bin);
        while (left > 1 && density.Values[left] > half)
            left--;
        while (right < density.Values.Count - 2 && density.Values[right] > half)
            right++;
        return right - left - 1 + Between(density.Values[left], density.Values[left + 1], half) + Between(density.Values[right], density.Values[right - 1], half);
    }

    // How far from the inner value the half is reached, as a share of a bin.
    private static double Between(double outside, double inside, double half) => inside > outside ? Math.Clamp((inside - half) / (inside - outside), 0, 1) : 0;

    private static ResonanceFit? Refine(double[] unknowns, PowerDensity density, int from, int to, ResonanceCurve curve)
    {
        var relative = 1 / Math.Sqrt(density.IndependentSegments);
        var (lowest, highest) = (Math.Log((from - 1) * density.BinHertz + (density.BinHertz / 2)), Math.Log((to + 1) * density.BinHertz));
        LinearFit? fit = null;
        var isSettled = false;
        for (var step = 0; step < MostSteps && !isSettled; step++)
        {
            double[] model = [.. Model(unknowns, density.BinHertz, from, to, curve)];
            double[] off = [.. model.Select((value, index) => (density.Values[from + index] / value) - 1)];
            fit = LeastSquares.Fit(Slopes(unknowns, model, density.BinHertz, from, to, curve), off, [.. Enumerable.Repeat(relative, off.Length)]);
            if (fit is null)
                return null;
            isSettled = fit.Values.Take(3).All(change => Math.Abs(change) < 1e-7);
            unknowns = [.. unknowns.Zip(fit.Values, (value, change) => value + Math.Clamp(change, -LargestStep, LargestStep))];
            unknowns[0] = Math.Clamp(unknowns[0], lowest, highest);
            unknowns[1] = Math.Clamp(unknowns[1], Math.Log(LeastDamping), Math.Log(MostDamping));
            // A ground that sinks to nothing has no slope left.
            unknowns[3] = Math.Max(unknowns[3], unknowns[2] - 12);
            if (unknowns.Length > 4)
                unknowns[4] = Math.Clamp(unknowns[4], -MostAdded, MostAdded);
        }

        return fit is null || (!isSettled && fit.Values.Take(2).Any(change => Math.Abs(change) > 1e-3)) ? null : Result(unknowns, fit);
    }

    private static ResonanceFit Result(double[] unknowns, LinearFit fit)
    {
        // Where the curve does not describe the peak, what is left over widens the result (Birge ratio).
        var left = fit.Degrees > 0 ? Math.Max(1, fit.WeightedSquares / fit.Degrees) : 1;
        Uncertain Of(int index) => new(Math.Exp(unknowns[index]), Math.Exp(unknowns[index]) * Math.Sqrt(fit.Cofactors[index, index] * SharedScatter * left));
        return new ResonanceFit(Of(0), Of(1), Of(2));
    }

    private static IEnumerable<double> Model(double[] unknowns, double binHertz, int from, int to, ResonanceCurve curve)
    {
        var (natural, damping, height, ground) = (Math.Exp(unknowns[0]), Math.Exp(unknowns[1]), Math.Exp(unknowns[2]), Math.Exp(unknowns[3]));
        var added = unknowns.Length > 4 ? unknowns[4] : 0;
        for (var bin = from; bin <= to; bin++)
            yield return (height * curve.At(bin * binHertz, natural, damping, added)) + ground;
    }

    private static List<double[]> Slopes(double[] unknowns, double[] model, double binHertz, int from, int to, ResonanceCurve curve)
    {
        List<double[]> rows = [.. model.Select(_ => new double[unknowns.Length])];
        for (var column = 0; column < unknowns.Length; column++)
        {
            double[] moved = [.. unknowns];
            moved[column] += Nudge;
            foreach (var (row, value) in Model(moved, binHertz, from, to, curve).Index())
                rows[row][column] = (value - model[row]) / (Nudge * model[row]);
        }

        return rows;
    }
}
