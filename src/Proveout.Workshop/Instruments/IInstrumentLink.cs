namespace Proveout.Workshop;

/// <summary>The way to an instrument that is told lines of text and answers with lines of text.</summary>
public interface IInstrumentLink
{
    /// <summary>Opens the way anew, so that no answer of an earlier question is left in it.</summary>
    /// <exception cref="IOException">Nothing answers there.</exception>
    Task<IInstrumentLine> OpenAsync(CancellationToken cancellation);
}
