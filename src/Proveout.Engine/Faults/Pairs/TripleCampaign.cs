namespace Proveout.Engine.Faults;

/// <summary>Evaluates every three of the faults that can hurt or destroy on the checks of a plan.</summary>
/// <remarks>A triple is surely caught when some check of the plan surely catches all three together.</remarks>
public sealed class TripleCampaign
{
    private const int RowsABlock = 64;
    private const int MostExamples = 100;

    private readonly FaultDictionary _dictionary;
    private readonly CheckPlan _plan;
    private readonly IFaultInteractions _interactions;

    /// <summary>Prepares a run.</summary>
    /// <param name="dictionary">What every check shows under every fault alone.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="interactions">What the trade knows of faults made together.</param>
    /// <param name="from">Where an earlier run with the same arguments stopped.</param>
    public TripleCampaign(FaultDictionary dictionary, CheckPlan plan, IFaultInteractions interactions, TripleCheckpoint? from = null)
    {
        (_dictionary, _plan, _interactions) = (dictionary, plan, interactions);
        Checkpoint = from ?? TripleCheckpoint.Start;
    }

    /// <summary>How far the run has come; kept up to date while it runs and after it was cancelled.</summary>
    public TripleCheckpoint Checkpoint { get; private set; }

    /// <summary>Runs to the end.</summary>
    /// <param name="progress">Told the share that is done, 0 to 1, from the thread that runs it.</param>
    /// <param name="cancellation">Stops the run; it can be continued from <see cref="Checkpoint"/>.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public TripleReport Run(IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        var threads = new FaultThreads(_interactions);
        var screen = new PairScreen(_dictionary, _plan.Checks, threads, cancellation);
        int[] faults = [.. screen.Everyone.Where(fault => _dictionary.Faults[fault].Severity >= Severity.Damage)];
        int[] caught = [.. faults.Where(screen.IsCaught)];
        var search = new TripleSearch(screen, faults, _interactions);
        while (Checkpoint.RowsDone < caught.Length)
        {
            var first = Checkpoint.RowsDone;
            var rows = new IReadOnlyList<int[]>[Math.Min(RowsABlock, caught.Length - first)];
            threads.ForEach(rows.Length, (index, own) => rows[index] = search.MaskedWith(caught[first + index], own), cancellation);
            Checkpoint = new TripleCheckpoint(
                first + rows.Length,
                Checkpoint.Masked + rows.Sum(row => (long)row.Count),
                [.. Checkpoint.Examples.Concat(rows.SelectMany(row => row)).Take(MostExamples)]);
            progress?.Report((double)Checkpoint.RowsDone / caught.Length);
        }

        var noneCaught = new UncaughtTriples(screen, [.. faults.Except(caught)], _interactions);
        var masked = Checkpoint.Masked + noneCaught.Simulated - noneCaught.CountCaught(threads, cancellation);
        var (simulated, contradictory) = TripleTotals.Of(faults, search.Contradicting);
        return new TripleReport(simulated, masked, contradictory, Checkpoint.Examples);
    }
}
