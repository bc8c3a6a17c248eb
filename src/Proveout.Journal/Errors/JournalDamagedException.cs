namespace Proveout.Journal;

/// <summary>What is stored is not what was recorded.</summary>
public sealed class JournalDamagedException : JournalException
{
    internal JournalDamagedException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}
