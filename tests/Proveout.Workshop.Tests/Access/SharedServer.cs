using Proveout.Journal;
using Proveout.Journal.Trials.Servers;

[assembly: AssemblyFixture(typeof(Proveout.Workshop.Tests.Access.SharedServer))]

namespace Proveout.Workshop.Tests.Access;

/// <summary>One PostgreSQL server for all tests of this project, started by the first that needs it.</summary>
public sealed class SharedServer : IDisposable
{
    private readonly Lazy<PostgresServer?> _server = new(PostgresServer.Begin);

    /// <summary>The server; the test is skipped where PostgreSQL is not installed.</summary>
    public PostgresServer Server
    {
        get
        {
            Assert.SkipUnless(_server.Value is not null, "PostgreSQL is not installed; ./test installs it where it may.");
            return _server.Value!;
        }
    }

    public void Dispose()
    {
        if (_server.IsValueCreated)
            _server.Value?.Dispose();
    }
}

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
