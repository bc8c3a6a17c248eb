namespace Proveout.Journal;

/// <summary>A key, or the identifier of a build, was used before for something else; nothing was written.</summary>
public sealed class KeyReusedException : JournalException
{
    internal KeyReusedException(Guid key, string takenBy)
        : base($"The key {key} already belongs to {takenBy}, which says something else. Make a new key for each thing to record.") =>
        Key = key;

    /// <summary>The key.</summary>
    public Guid Key { get; }
}
