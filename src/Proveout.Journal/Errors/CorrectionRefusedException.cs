namespace Proveout.Journal;

/// <summary>A correction that refers to nothing it could correct; nothing was written.</summary>
public sealed class CorrectionRefusedException : JournalException
{
    internal CorrectionRefusedException(int corrects, string why)
        : base($"Entry {corrects} cannot be corrected: {why} Correct an entry that holds a reading of the same check.") =>
        Corrects = corrects;

    /// <summary>The sequence that the correction refers to.</summary>
    public int Corrects { get; }
}
