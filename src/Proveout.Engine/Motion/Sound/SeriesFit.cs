namespace Proveout.Engine.Motion;

/// <summary>A series fitted to peaks, with the uncertainty of its two numbers.</summary>
/// <param name="Series">The series.</param>
/// <param name="StandardHertz">Standard uncertainty of the fundamental.</param>
/// <param name="StandardInharmonicity">Standard uncertainty of B.</param>
internal readonly record struct SeriesFit(PartialSeries Series, double StandardHertz, double StandardInharmonicity)
{
    // What is known of B without any partial: belts lie below 0.05 (reference: EI of a thousandth N·m² at 5 N and 150 mm gives 0.09; from memory).
    private const double PriorStandard = 0.03;

    // No peak is trusted better than this share of its frequency: partials beat with the other plane of vibration and glide a little.
    private const double LeastShare = 0.001;

    /// <summary>Weighted least squares of (f(n)/n)² = F² + F² B n², which is a line in n²; B has a weak prior at zero and is never negative.</summary>
    public static SeriesFit To(IReadOnlyDictionary<int, Peak> partials, PartialSeries start)
    {
        var free = Solve(partials, start, PriorStandard);
        return free.Series.Inharmonicity >= 0 ? free : Solve(partials, start, PriorStandard * 1e-3) with { StandardInharmonicity = free.StandardInharmonicity };
    }

    private static SeriesFit Solve(IReadOnlyDictionary<int, Peak> partials, PartialSeries start, double priorStandard)
    {
        var scale = start.FundamentalHertz * start.FundamentalHertz;
        var (s0, s1, s2, r0, r1) = (0.0, 0.0, 1 / (priorStandard * priorStandard), 0.0, 0.0);
        foreach (var (number, peak) in partials)
        {
            var square = peak.Hertz / number;
            square = square * square / scale;
            var standard = 2 * square * Math.Sqrt(Square(peak.StandardHertz / peak.Hertz) + Square(LeastShare));
            var weight = 1 / (standard * standard);
            var abscissa = (double)number * number;
            s0 += weight;
            s1 += weight * abscissa;
            s2 += weight * abscissa * abscissa;
            r0 += weight * square;
            r1 += weight * square * abscissa;
        }

        var determinant = (s0 * s2) - (s1 * s1);
        var (limp, slope) = (((s2 * r0) - (s1 * r1)) / determinant, ((s0 * r1) - (s1 * r0)) / determinant);
        var spread = Spread(partials, scale, limp, slope);
        var fundamental = Math.Sqrt(Math.Max(1e-12, limp + slope) * scale);
        var variance = (s2 + s0 - (2 * s1)) / determinant;
        return new(
            new(fundamental, Math.Max(priorStandard < PriorStandard ? 0 : -1, slope / limp)),
            spread * Math.Sqrt(variance) * scale / (2 * fundamental),
            spread * Math.Sqrt(s0 / determinant) / limp);
    }

    // Birge ratio, never below 1: partials that scatter more than their uncertainties say widen the result.
    private static double Spread(IReadOnlyDictionary<int, Peak> partials, double scale, double limp, double slope)
    {
        if (partials.Count < 3)
            return 1;
        var sum = partials.Sum(item =>
        {
            var square = Square(item.Value.Hertz / item.Key) / scale;
            var standard = 2 * square * Math.Sqrt(Square(item.Value.StandardHertz / item.Value.Hertz) + Square(LeastShare));
            return Square((square - limp - (slope * item.Key * item.Key)) / standard);
        });
        return Math.Max(1, Math.Sqrt(sum / (partials.Count - 2)));
    }

    private static double Square(double value) => value * value;
}
