namespace Proveout.Engine.Faults;

/// <summary>Evaluates every pair of faults on the checks of a plan.</summary>
/// <remarks>
/// A pair is surely caught when, under both faults together, some check of the plan cannot show anything that it shows of the sound machine.
/// Most pairs are decided by <see cref="PairScreen"/>; the rest are simulated check by check until one catches.
/// </remarks>
public sealed class PairCampaign
{
    private const int RowsABlock = 256;

    private readonly FaultDictionary _dictionary;
    private readonly CheckPlan _plan;
    private readonly IFaultInteractions _interactions;
    private readonly Func<int, int, Severity> _severity;
    private readonly bool _beyondPlan;

    /// <summary>Prepares a run.</summary>
    /// <param name="dictionary">What every check shows under every fault alone.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="interactions">What the trade knows of faults made together.</param>
    /// <param name="severity">What two faults together do; by default the worse of what each does.</param>
    /// <param name="from">Where an earlier run with the same arguments stopped.</param>
    /// <param name="beyondPlan">True to look among all candidates for checks that catch pairs of two faults that none catches alone.</param>
    public PairCampaign(
        FaultDictionary dictionary,
        CheckPlan plan,
        IFaultInteractions interactions,
        Func<int, int, Severity>? severity = null,
        PairCheckpoint? from = null,
        bool beyondPlan = true)
    {
        (_dictionary, _plan, _interactions, _beyondPlan) = (dictionary, plan, interactions, beyondPlan);
        _severity = severity ?? ((one, two) => (Severity)Math.Max((int)dictionary.Faults[one].Severity, (int)dictionary.Faults[two].Severity));
        Checkpoint = from ?? PairCheckpoint.Start;
    }

    /// <summary>How far the run has come; kept up to date while it runs and after it was cancelled.</summary>
    public PairCheckpoint Checkpoint { get; private set; }

    /// <summary>Runs to the end.</summary>
    /// <param name="progress">Told the share that is done, 0 to 1, from the thread that runs it.</param>
    /// <param name="cancellation">Stops the run; it can be continued from <see cref="Checkpoint"/>.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public PairReport Run(IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var threads = new FaultThreads(_interactions);
        var screen = new PairScreen(_dictionary, _plan.Checks, threads, cancellation);
        var asked = _beyondPlan ? new PairScreen(_dictionary, [.. Enumerable.Range(0, _dictionary.Checks.Count)], threads, cancellation, [.. screen.Uncaught]) : screen;
        var uncaught = new UncaughtPairs(_dictionary, _plan, screen, asked, _severity);
        var count = _dictionary.Faults.Count;
        while (Checkpoint.RowsDone < count)
        {
            var rows = new PairRow[Math.Min(RowsABlock, count - Checkpoint.RowsDone)];
            var first = Checkpoint.RowsDone;
            threads.ForEach(
                rows.Length,
                (index, own) => rows[index] = screen.IsCaught(first + index) ? CaughtRow(first + index, screen, own) : uncaught.Row(first + index, own),
                cancellation);
            Checkpoint = new PairCheckpoint(
                first + rows.Length,
                Checkpoint.NoneCaughtCaught + rows.Sum(row => (long)row.Caught),
                [.. Checkpoint.Masked, .. rows.SelectMany(row => row.Masked)]);
            progress?.Report((double)Checkpoint.RowsDone / count);
        }

        return PairTotals.Of(screen, _interactions, Checkpoint);
    }

    // Pairs of a fault that is caught alone: those of two such faults stand with the first of them.
    private PairRow CaughtRow(int fault, PairScreen screen, IFaultInteractions own)
    {
        List<MaskedPair> masked = [];
        var contradicting = own.Contradicting(fault);
        foreach (var other in screen.Overturning(fault))
            if (other != fault && Reaches(other) && !contradicting.Contains(other) && !IsCaught(fault, other, screen, own))
                masked.Add(new MaskedPair(
                    Math.Min(fault, other),
                    Math.Max(fault, other),
                    screen.IsCaught(other) ? PairKind.BothCaught : PairKind.OneCaught,
                    _severity(fault, other),
                    own.ShowsTogether([fault, other])));
        return new PairRow(0, masked);

        bool Reaches(int other) => !screen.IsCaught(other) || (other > fault && Array.BinarySearch(screen.Overturning(other), fault) >= 0);
    }

    // First the checks that catch one of them alone; a check that touches neither shows what it shows of the sound machine.
    private bool IsCaught(int one, int two, PairScreen screen, IFaultInteractions own)
    {
        Span<int> both = [one, two];
        var touched = screen.Touched(one).Union(screen.Touched(two))
            .OrderByDescending(check => _dictionary.IsSurelyCaught(one, check) || _dictionary.IsSurelyCaught(two, check));
        foreach (var check in touched)
            if (own.IsSurelyCaught(both, check))
                return true;
        return false;
    }
}
