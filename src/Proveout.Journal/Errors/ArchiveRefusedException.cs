namespace Proveout.Journal;

/// <summary>An archive of a build is not whole, not as it was written, or not one at all; nothing was taken from it.</summary>
public sealed class ArchiveRefusedException : JournalException
{
    internal ArchiveRefusedException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}
