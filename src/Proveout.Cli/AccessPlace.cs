using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Who may come in at the bench of a journal, opened for a command.</summary>
internal sealed class AccessPlace : IAsyncDisposable
{
    private readonly IJournal? _journal;

    private AccessPlace(IAccessStore store, IJournal? journal) => (Store, _journal) = (store, journal);

    public IAccessStore Store { get; }

    /// <summary>Opens it; a journal in a database is made where there is none, one in a file is left alone.</summary>
    /// <exception cref="JournalException">The database cannot be opened.</exception>
    public static async Task<AccessPlace> OpenAsync(string journal, CancellationToken cancellation)
    {
        if (!JournalPlace.IsDatabase(journal))
            return new(AccessFile.Beside(journal), null);
        var opened = await JournalPlace.OpenAsync(journal, TimeProvider.System, cancellation);
        return new(AccessKeeping.In(opened)!.Store, opened);
    }

    public ValueTask DisposeAsync() => _journal?.DisposeAsync() ?? ValueTask.CompletedTask;
}
