namespace Proveout.Engine.Motion;

/// <summary>Every shaper for the resonances of one direction, and the one to use.</summary>
/// <param name="Judgements">One for each kind, shortest first; empty without a resonance.</param>
/// <param name="Best">The one to use; null without a resonance.</param>
/// <param name="MeetsTolerance">True when it keeps the tolerance, false when it is only the one that leaves least.</param>
/// <param name="Modes">The resonances that count, largest travel first.</param>
/// <param name="IsDampingAssumed">True when the damping of the largest could not be told, and the usual band was covered instead.</param>
public sealed record ShaperAdvice(
    IReadOnlyList<ShaperJudgement> Judgements, ShaperJudgement? Best, bool MeetsTolerance, IReadOnlyList<VibrationMode> Modes, bool IsDampingAssumed)
{
    /// <summary>Damping ratios of gantries, for a peak of which it cannot be told: 0.02 to 0.15 (common practice; shared trade facts, D7, with some to spare below).</summary>
    public static readonly Uncertain UsualDamping = new(0.085, 0.0325);

    // What travels less than a tenth of the largest is not shaped for.
    private const double LeastTravel = 0.1;
    private const double GridStep = 1.01;
    private const double GridReach = 1.3;
    private const int FrequencyPoints = 9;

    // Kinds that tolerate some are made for a little less than may be left, so that a damping that is not quite known does not carry them over it.
    private const double DesignShare = 0.9;

    /// <summary>Advice for the resonances of one direction.</summary>
    /// <param name="modes">The resonances.</param>
    /// <param name="density">The measured spectrum.</param>
    /// <param name="demand">What is asked.</param>
    public static ShaperAdvice For(IReadOnlyList<VibrationMode> modes, PowerDensity density, ShaperDemand demand)
    {
        ArgumentNullException.ThrowIfNull(modes);
        ArgumentNullException.ThrowIfNull(density);
        ArgumentNullException.ThrowIfNull(demand);
        if (modes.Count == 0)
            return new([], null, false, [], false);
        var largest = modes.Max(mode => mode.Travel);
        VibrationMode[] counted = [.. modes.Where(mode => mode.Travel >= LeastTravel * largest).OrderByDescending(mode => mode.Travel)];
        var main = counted[0].DampingRatio ?? UsualDamping;
        var damping = Math.Min(main.Value, InputShapers.MostDamping);
        ShaperJudgement[] judgements =
        [
            .. Enum.GetValues<ShaperKind>()
                .Select(kind => Designed(kind, counted, damping, demand))
                .Select(shaper => Judge(shaper, counted, density, demand))
                .OrderBy(judgement => judgement.Shaper.DurationSeconds),
        ];
        var good = judgements.Where(judgement => judgement.Residual <= demand.Tolerance).ToArray();
        var best = good.Length > 0 ? good.MinBy(judgement => judgement.RoundingAtOne)! : judgements.MinBy(judgement => judgement.Residual)!;
        return new(judgements, best, good.Length > 0, counted, counted[0].DampingRatio is null);
    }

    /// <summary>Vibration left in some resonances together, weighted by their travel, at the worst place inside their uncertainties.</summary>
    /// <param name="shaper">The shaper.</param>
    /// <param name="modes">The resonances.</param>
    /// <param name="wander">Share by which each may wander beside its uncertainty.</param>
    public static double WorstResidual(InputShaper shaper, IReadOnlyList<VibrationMode> modes, double wander)
    {
        ArgumentNullException.ThrowIfNull(modes);
        var (left, all) = (0.0, 0.0);
        foreach (var mode in modes)
        {
            var square = mode.Travel * mode.Travel;
            left += square * Math.Pow(Worst(shaper, mode, wander), 2);
            all += square;
        }

        return Math.Sqrt(left / all);
    }

    // One resonance: the shaper of the literature, made for it. Several: made for the frequency at which it leaves least of them together.
    private static InputShaper Designed(ShaperKind kind, VibrationMode[] modes, double damping, ShaperDemand demand)
    {
        var tolerated = Math.Clamp(DesignShare * demand.Tolerance, 0.005, 0.25);
        if (modes.Length == 1)
            return InputShapers.Of(kind, modes[0].Hertz.Value, damping, tolerated);
        var model = InputShapers.Of(kind, 1, damping, tolerated);
        var (lowest, highest) = (modes.Min(mode => mode.Hertz.Value) / GridReach, modes.Max(mode => mode.Hertz.Value) * GridReach);
        var best = modes.Select(mode => mode.Hertz.Value)
            .Concat(Enumerable.Range(0, (int)(Math.Log(highest / lowest) / Math.Log(GridStep))).Select(step => lowest * Math.Pow(GridStep, step)))
            .Select(hertz => Moved(model, hertz))
            .MinBy(shaper => WorstResidual(shaper, modes, demand.Wander))!;
        return best;
    }

    // The same shares for another frequency: only the times change.
    private static InputShaper Moved(InputShaper model, double hertz) =>
        model with { Hertz = hertz, Impulses = [.. model.Impulses.Select(impulse => impulse with { Seconds = impulse.Seconds / hertz })] };

    private static ShaperJudgement Judge(InputShaper shaper, VibrationMode[] modes, PowerDensity density, ShaperDemand demand) => new(
        shaper,
        WorstResidual(shaper, modes, demand.Wander),
        SpectrumShare(shaper, density, demand),
        CornerRounding.HighestAcceleration(shaper, demand.CornerError, demand.CornerSpeed),
        CornerRounding.Error(shaper, 0, 1));

    private static double Worst(InputShaper shaper, VibrationMode mode, double wander)
    {
        var damping = mode.DampingRatio ?? UsualDamping;
        var reach = mode.Hertz.Expanded + (wander * mode.Hertz.Value);
        var worst = 0.0;
        for (var point = 0; point < FrequencyPoints; point++)
        {
            var hertz = mode.Hertz.Value + (reach * ((2.0 * point / (FrequencyPoints - 1)) - 1));
            foreach (var side in (ReadOnlySpan<double>)[-1, 0, 1])
                worst = Math.Max(worst, shaper.Residual(Math.Max(hertz, 1e-3), Math.Clamp(damping.Value + (side * damping.Expanded), 0, 0.95)));
        }

        return worst;
    }

    // The command's own spectrum is multiplied by the shaper's, which is its residual without damping.
    private static double SpectrumShare(InputShaper shaper, PowerDensity density, ShaperDemand demand)
    {
        var (left, all) = (0.0, 0.0);
        for (var bin = 1; bin < density.Values.Count; bin++)
        {
            var hertz = bin * density.BinHertz;
            if (hertz < demand.LowestHertz || hertz > demand.HighestHertz)
                continue;
            all += density.Values[bin];
            left += density.Values[bin] * Math.Pow(shaper.Residual(hertz, 0), 2);
        }

        return all > 0 ? Math.Sqrt(left / all) : 0;
    }
}
