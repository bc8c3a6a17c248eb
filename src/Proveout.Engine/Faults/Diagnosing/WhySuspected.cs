namespace Proveout.Engine.Faults;

/// <summary>Finds the reasons for a suspect in the readings, and the check that would clear it.</summary>
/// <param name="dictionary">What every check shows under every fault.</param>
/// <param name="posterior">What is believed after the readings.</param>
/// <param name="readings">The readings.</param>
/// <param name="simulator">Simulates several faults at once; may be null.</param>
/// <param name="allowed">Which checks may be named as ruling out; all when null.</param>
public sealed class WhySuspected(
    FaultDictionary dictionary,
    Posterior posterior,
    IReadOnlyList<Reading> readings,
    IFaultSimulator? simulator = null,
    Func<Check, bool>? allowed = null)
{
    // Rivals beyond these hardly count, and a rival that nobody believes is no reason to measure.
    private const int MostRivals = 40;
    private const double LeastShare = 1e-3;

    private readonly HashSet<string> _done = [.. readings.Select(reading => reading.CheckId)];

    private readonly (IReadOnlyList<int> Faults, double Probability)[] _rivals =
    [
        .. posterior.Hypotheses.Select(item => (item.Faults, item.Probability))
            .Append((Faults: [], Probability: posterior.Sound))
            .OrderByDescending(item => item.Probability)
            .Take(MostRivals),
    ];

    /// <summary>The reasons for faults that are suspected together.</summary>
    /// <param name="faults">Indices of the faults.</param>
    /// <param name="alike">Sets of faults that no check tells apart from these, these among them.</param>
    public SuspectReasons Of(IReadOnlyList<int> faults, IReadOnlyList<IReadOnlyList<int>> alike) => new(Fitting(faults), RuledOutBy(faults, alike));

    private IReadOnlyList<FittingReading> Fitting(IReadOnlyList<int> faults) =>
    [
        .. from reading in readings
           let check = dictionary.IndexOfCheck(reading.CheckId)
           where check is not null && dictionary.Checks[check.Value].Judge(reading.Value) == Verdict.Fail
           let shown = FaultsTogether.Shown(dictionary, faults, check.Value, simulator)
           where shown != ReadingInterval.Anything && shown.Contains(reading.Value)
           orderby WidthOf(dictionary.Checks[check.Value], shown)
           select new FittingReading(check.Value, reading.Value, shown),
    ];

    private RulingCheck? RuledOutBy(IReadOnlyList<int> faults, IReadOnlyList<IReadOnlyList<int>> alike)
    {
        var rivals = _rivals.Where(rival => !alike.Any(rival.Faults.SequenceEqual)).ToArray();
        return rivals.SelectMany(rival => rival.Faults)
            .Concat(faults)
            .Distinct()
            .SelectMany(fault => dictionary.ResponseOf(fault).Checks)
            .Distinct()
            .Where(MayBeDone)
            .Select(check => Against(faults, rivals, check))
            .OfType<RulingCheck>()
            .OrderByDescending(ruling => ruling.Share)
            .ThenBy(ruling => dictionary.Checks[ruling.Check].CostSeconds)
            .FirstOrDefault();
    }

    private bool MayBeDone(int check) =>
        dictionary.Checks[check] is var about
        && about.Expectation != ReadingInterval.Anything
        && !_done.Contains(about.Id)
        && allowed?.Invoke(about) != false;

    private RulingCheck? Against(IReadOnlyList<int> faults, (IReadOnlyList<int> Faults, double Probability)[] rivals, int check)
    {
        var shown = FaultsTogether.Shown(dictionary, faults, check, null);
        var share = 0.0;
        ReadingInterval? otherwise = null;
        foreach (var rival in rivals)
            if (FaultsTogether.Shown(dictionary, rival.Faults, check, null) is var other && other.IsDisjointFrom(shown))
            {
                share += rival.Probability;
                otherwise ??= other;
            }

        return share >= LeastShare && otherwise is { } differs ? new(check, shown, differs, share) : null;
    }

    private static double WidthOf(Check check, ReadingInterval shown) =>
        Symptom.Is(check) ? shown.High - shown.Low : ReadingScale.Of(shown.High) - ReadingScale.Of(shown.Low);
}
