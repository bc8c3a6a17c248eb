using Proveout.Journal.Tests.Contract;

namespace Proveout.Journal.Tests.Memory;

public sealed class MemoryContractTests : JournalContract
{
    private readonly MemoryStore.Shelf _shelf = new();

    protected override Task<IJournal> OpenAsync(TimeProvider clock) => Task.FromResult<IJournal>(new StoreJournal(new MemoryStore(_shelf), clock));
}
