namespace Proveout.Journal;

/// <summary>The record of a build was not taken in, sealed or restored, because it is not whole or contradicts what is there; nothing was written.</summary>
public sealed class RecordRefusedException : JournalException
{
    internal RecordRefusedException(string sentence)
        : base(sentence)
    {
    }
}
