namespace Proveout.Journal.Tests.Contract;

/// <summary>What every journal must do, whatever it is kept in. A store joins by deriving from this and opening itself.</summary>
public abstract partial class JournalContract
{
    private protected static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    /// <summary>Opens the journal of this test; a second call opens the same one again, as another process would.</summary>
    protected abstract Task<IJournal> OpenAsync(TimeProvider clock);

    private async Task<(IJournal Journal, Build Build)> StartAsync()
    {
        var journal = await OpenAsync(new SteppingClock());
        return (journal, await journal.StartBuildAsync(Drafts.Build()));
    }
}
