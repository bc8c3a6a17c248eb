using Proveout.Journal.Tests.Contract;

namespace Proveout.Journal.Tests.Postgres;

public sealed class PostgresContractTests(SharedServer shared) : JournalContract, IDisposable
{
    private readonly string _address = shared.Server.NewDatabase();

    public void Dispose() => shared.Server.GiveBack(_address);

    protected override async Task<IJournal> OpenAsync(TimeProvider clock) => await PostgresJournal.OpenAsync(_address, clock);
}
