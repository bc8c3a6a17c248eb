namespace Proveout.Journal;

/// <summary>Something the journal could not or would not do. The message is a sentence for the user: what, where, what to do.</summary>
public abstract class JournalException : Exception
{
    private protected JournalException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}
