using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>How far builds are: folded from their entries, and kept while nothing is added.</summary>
/// <param name="journal">Keeps the entries.</param>
/// <param name="experience">What the other builds teach.</param>
internal sealed class BenchStates(IJournal journal, WorkshopExperience experience)
{
    // Far more than are worked on at once; one of three hundred checks takes about half a megabyte.
    private const int Most = 400;

    private readonly RecentlyUsed<Guid, (BenchState State, int Found)> _latest = new(Most);

    /// <summary>How far a build is now.</summary>
    public async Task<BenchState> OfAsync(Build build, BuildSummary summary, PlannedMachine planned, CancellationToken cancellation)
    {
        var found = await experience.FreshAsync(cancellation);
        if (_latest.TryFind(build.Id, out var known) && known.Found == found && (await journal.ReadAsync(build.Id, (int)known.State.LastSequence, cancellation)).Count == 0)
            return known.State;
        var entries = await journal.ReadAsync(build.Id, 0, cancellation);
        var learned = await experience.OfOthersAsync(build.Id, cancellation);
        var state = BenchFold.Of(summary, learned.Applied(planned), entries);
        _latest.Set(build.Id, (state, found));
        return state;
    }
}
