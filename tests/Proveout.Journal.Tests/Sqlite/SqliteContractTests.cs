using Proveout.Journal.Tests.Contract;

namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteContractTests : JournalContract, IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    protected override async Task<IJournal> OpenAsync(TimeProvider clock) => await SqliteJournal.OpenAsync(_folder.Journal, clock);
}
