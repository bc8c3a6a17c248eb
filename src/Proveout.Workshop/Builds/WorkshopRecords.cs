using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>All builds of a journal in digest: at each look only what is new since the last is read, so that ten thousand builds cost no more than a few.</summary>
/// <param name="journal">Keeps the builds.</param>
public sealed class WorkshopRecords(IJournal journal)
{
    private const int Portion = 500;

    private readonly WorkshopDigest _digest = new();
    private readonly Lock _queue = new();
    private Task _last = Task.CompletedTask;
    private JournalSize? _size;

    /// <summary>Looks at the digest when nothing new is left to read. The look is alone with it, and takes nothing along that changes later.</summary>
    internal async Task<T> LookAsync<T>(Func<WorkshopDigest, T> look, CancellationToken cancellation)
    {
        // One after the other, so that a large journal is not read by several at once.
        var done = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        Task before;
        lock (_queue)
            (before, _last) = (_last, done.Task);
        try
        {
            await before;
            var size = await journal.SizeAsync(cancellation);
            if (size != _size)
                await ReadNewsAsync(cancellation);
            _size = size;
            return look(_digest);
        }
        finally
        {
            done.SetResult();
        }
    }

    // What is recorded between asking for the size and reading is taken in now, and the size is then found changed once more.
    private async Task ReadNewsAsync(CancellationToken cancellation)
    {
        while (true)
        {
            var news = await journal.ReadNewsAsync(_digest.Known, Portion, cancellation);
            foreach (var build in news)
                _digest.Take(build);
            if (news.Count < Portion)
                return;
        }
    }
}
