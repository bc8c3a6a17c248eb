using Proveout.Journal;
using Proveout.Journal.Trials.Servers;

namespace Proveout.Workshop.Tests.Access;

/// <summary>A database of a test's own, and what the test opened in it, each with connections of its own as another server would.</summary>
internal sealed class SharedPlace(PostgresServer server) : IDisposable
{
    private readonly List<IJournal> _opened = [];

    public string Address { get; } = server.NewDatabase();

    public IJournal Open()
    {
        var journal = JournalPlace.OpenAsync(Address, TimeProvider.System).GetAwaiter().GetResult();
        lock (_opened)
            _opened.Add(journal);
        return journal;
    }

    public void Dispose()
    {
        foreach (var journal in _opened)
            journal.DisposeAsync().AsTask().GetAwaiter().GetResult();
        server.GiveBack(Address);
    }
}
