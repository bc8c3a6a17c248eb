namespace Proveout.Workshop;

/// <summary>A deviation or photograph in the journal.</summary>
/// <param name="Sequence">Entry number.</param>
/// <param name="When">When, in universal time.</param>
/// <param name="Person">Who.</param>
/// <param name="Subject">What it concerns: a check or a part; may be empty.</param>
/// <param name="Text">The note or caption.</param>
/// <param name="PhotoSha256">Hash that names the photograph; null when there is none.</param>
public sealed record JournalNote(long Sequence, DateTimeOffset When, string Person, string Subject, string Text, string? PhotoSha256)
{
    /// <summary>Name of the data file of a measurement; empty when there is none.</summary>
    public string FileName { get; init; } = "";

    /// <summary>Hash that names the data file; empty when there is none.</summary>
    public string FileSha256 { get; init; } = "";
}
