namespace Proveout.Workshop;

/// <summary>An open way to an instrument.</summary>
public interface IInstrumentLine : IAsyncDisposable
{
    /// <summary>Sends a question and waits for the line that answers it.</summary>
    /// <exception cref="IOException">The way broke, or the answer is longer than any value.</exception>
    Task<string> AskAsync(string question, CancellationToken cancellation);
}
