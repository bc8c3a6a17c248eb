using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Recomputes the chains of builds.</summary>
/// <param name="journal">Keeps them.</param>
public sealed class BuildVerification(IJournal journal)
{
    /// <summary>The verdict on one build.</summary>
    public async Task<BuildVerdict> OfAsync(Build build, CancellationToken cancellation) => new(build, await journal.VerifyAsync(build.Id, cancellation));

    /// <summary>The verdicts on every build, in the order in which they were started.</summary>
    public async Task<IReadOnlyList<BuildVerdict>> OfAllAsync(CancellationToken cancellation)
    {
        var verdicts = new List<BuildVerdict>();
        foreach (var build in await journal.ListBuildsAsync(cancellation))
            verdicts.Add(await OfAsync(build, cancellation));
        return verdicts;
    }
}
