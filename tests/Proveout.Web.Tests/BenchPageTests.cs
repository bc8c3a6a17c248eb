namespace Proveout.Web.Tests;

/// <summary>Tests of pages, each on a bench server of its own.</summary>
public abstract class BenchPageTests : IAsyncLifetime
{
    private protected BenchServer Server { get; private set; } = null!;

    private protected Visitor Visitor { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Visitor = (Server = await BenchServer.StartAsync()).Visit();

    public async ValueTask DisposeAsync()
    {
        Visitor.Dispose();
        await Server.DisposeAsync();
        GC.SuppressFinalize(this);
    }
}
