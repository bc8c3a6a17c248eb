using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What every fault does at one stage.</summary>
internal static class StageHarms
{
    /// <summary>The worst finding of each fault; null where it does nothing there.</summary>
    /// <param name="consequences">Computes them.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="faults">The faults to look at.</param>
    /// <param name="all">All faults, by index.</param>
    /// <param name="cancellation">Stops it.</param>
    public static LiveFinding?[] Of(
        LiveConsequences consequences, LiveStage stage, IReadOnlyList<int> faults, IReadOnlyList<WiringFault> all, CancellationToken cancellation)
    {
        var worst = new LiveFinding?[faults.Count];
        Parallel.For(
            0,
            faults.Count,
            new ParallelOptions { CancellationToken = cancellation },
            place => worst[place] = consequences.WorstOf(all[faults[place]].Changes, stage));
        return worst;
    }

    /// <summary>How many of some faults would do damage or worse there.</summary>
    /// <param name="consequences">Computes it.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="faults">The faults to look at.</param>
    /// <param name="all">All faults, by index.</param>
    /// <param name="cancellation">Stops it.</param>
    public static int Count(
        LiveConsequences consequences, LiveStage stage, IReadOnlyList<int> faults, IReadOnlyList<WiringFault> all, CancellationToken cancellation)
    {
        var count = 0;
        Parallel.For(
            0,
            faults.Count,
            new ParallelOptions { CancellationToken = cancellation },
            place =>
            {
                if (consequences.IsAsBadAs(all[faults[place]].Changes, Severity.Damage, stage))
                    Interlocked.Increment(ref count);
            });
        return count;
    }
}
