namespace Proveout.Workshop;

/// <summary>Turns to compute a hash: it takes a core for a moment, and more than two at a time would take the bench from those who work at it.</summary>
internal sealed class HashingTurns : IDisposable
{
    private const int AtOnce = 2;
    private const int MostWaiting = 20;

    private readonly SemaphoreSlim _turns = new(AtOnce);
    private int _inside;

    /// <summary>Waits for a turn, and holds it until disposed of; null when too many wait already.</summary>
    public async Task<IDisposable?> NextAsync(CancellationToken cancellation)
    {
        if (Interlocked.Increment(ref _inside) > AtOnce + MostWaiting)
        {
            Interlocked.Decrement(ref _inside);
            return null;
        }

        try
        {
            await _turns.WaitAsync(cancellation);
            return new Turn(this);
        }
        catch
        {
            Interlocked.Decrement(ref _inside);
            throw;
        }
    }

    public void Dispose() => _turns.Dispose();

    private sealed class Turn(HashingTurns turns) : IDisposable
    {
        public void Dispose()
        {
            turns._turns.Release();
            Interlocked.Decrement(ref turns._inside);
        }
    }
}
