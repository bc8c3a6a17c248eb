using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>All builds of a journal in digest: at each look only what is new since the last is read, so that ten thousand builds cost no more than a few.</summary>
/// <param name="journal">Keeps the builds.</param>
public sealed class WorkshopRecords(IJournal journal)
{
    private const int Portion = 500;

    private readonly WorkshopDigest _digest = new();

    /// <summary>Looks at the digest when nothing new is left to read. The look is alone with it, and takes nothing along that changes later.</summary>
    internal async Task<T> LookAsync<T>(Func<WorkshopDigest, T> look, CancellationToken cancellation)
    {
        while (true)
        {
            Dictionary<Guid, int> known;
            lock (_digest)
                known = new(_digest.Known);
            // Read outside the lock; what another look took in meanwhile is passed over.
            var news = await journal.ReadNewsAsync(known, Portion, cancellation);
            lock (_digest)
            {
                foreach (var build in news)
                    _digest.Take(build);
                if (news.Count < Portion)
                    return look(_digest);
            }
        }
    }
}
