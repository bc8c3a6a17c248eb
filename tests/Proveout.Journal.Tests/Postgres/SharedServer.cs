using Proveout.Journal.Trials.Servers;

[assembly: AssemblyFixture(typeof(Proveout.Journal.Tests.Postgres.SharedServer))]

namespace Proveout.Journal.Tests.Postgres;

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
