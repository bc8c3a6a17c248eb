namespace Proveout.Journal;

/// <summary>A draft that cannot be recorded as it is; nothing was written.</summary>
public sealed class DraftRefusedException : JournalException
{
    internal DraftRefusedException(string sentence)
        : base(sentence)
    {
    }
}
