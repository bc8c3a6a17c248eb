namespace Proveout.Journal;

/// <summary>The file is no journal, or one of a newer format than this program knows.</summary>
public sealed class JournalFormatException : JournalException
{
    internal JournalFormatException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}
