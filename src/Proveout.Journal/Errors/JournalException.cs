namespace Proveout.Journal;

/// <summary>Something the journal could not or would not do. The message is a sentence for the user: what, where, what to do.</summary>
public abstract class JournalException : Exception
{
    private protected JournalException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}

/// <summary>The store cannot be reached or written: folder, permission, space, or a lock held too long.</summary>
public sealed class JournalUnavailableException : JournalException
{
    internal JournalUnavailableException(string sentence, Exception? cause)
        : base(sentence, cause)
    {
    }
}

/// <summary>The file is no journal, or one of a newer format than this program knows.</summary>
public sealed class JournalFormatException : JournalException
{
    internal JournalFormatException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}

/// <summary>What is stored is not what was recorded.</summary>
public sealed class JournalDamagedException : JournalException
{
    internal JournalDamagedException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}
