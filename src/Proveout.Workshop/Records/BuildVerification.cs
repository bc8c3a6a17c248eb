using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Recomputes the chains of builds.</summary>
/// <param name="journal">Keeps them.</param>
public sealed class BuildVerification(IJournal journal)
{
    /// <summary>The verdict on one build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="kept">Seals that were kept elsewhere.</param>
    /// <param name="publicKey">The key that is trusted; null to accept each seal's own.</param>
    /// <param name="cancellation">Cancels.</param>
    public async Task<BuildVerdict> OfAsync(Build build, IReadOnlyList<Seal> kept, string? publicKey, CancellationToken cancellation)
    {
        var verdict = new BuildVerdict(build, await journal.VerifyAsync(build.Id, cancellation))
        {
            Seals = await journal.CheckSealsAsync(build.Id, kept, publicKey, cancellation),
        };
        // Entries that were altered may not be readable; their times say nothing then.
        return verdict.IsWhole
            ? verdict with { ClockJumps = ClockJump.In(build, await journal.ReadAsync(build.Id, 0, cancellation)) }
            : verdict;
    }

    /// <summary>The verdicts on every build, in the order in which they were started.</summary>
    public async Task<IReadOnlyList<BuildVerdict>> OfAllAsync(string? publicKey, CancellationToken cancellation)
    {
        var verdicts = new List<BuildVerdict>();
        foreach (var build in await journal.ListBuildsAsync(cancellation))
            verdicts.Add(await OfAsync(build, [], publicKey, cancellation));
        return verdicts;
    }

    /// <summary>What the store itself finds wrong with how it keeps the rows; empty when nothing.</summary>
    public Task<IReadOnlyList<string>> OfStoreAsync(CancellationToken cancellation) => journal.InspectAsync(cancellation);
}
