namespace Proveout.Workshop;

/// <summary>Slows down who tries names, passwords and codes.</summary>
public interface IAttemptLimits
{
    /// <summary>How long to wait before this try; null when it may be made now, which then counts as one.</summary>
    TimeSpan? WaitFor(string address, string name);

    /// <summary>Waits for a turn to compute a hash, and holds it until disposed of; null when too many wait already.</summary>
    Task<IDisposable?> TurnAsync(CancellationToken cancellation);

    /// <summary>Notes a failure.</summary>
    void Failed(string address, string name);

    /// <summary>Forgets the failures of who came in.</summary>
    void Succeeded(string address, string name);
}
