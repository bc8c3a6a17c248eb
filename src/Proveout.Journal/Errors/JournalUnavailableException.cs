namespace Proveout.Journal;

/// <summary>The store cannot be reached or written: folder, permission, space, or a lock held too long.</summary>
public sealed class JournalUnavailableException : JournalException
{
    internal JournalUnavailableException(string sentence, Exception? cause)
        : base(sentence, cause)
    {
    }
}
