namespace Proveout.Publish.Report;

/// <summary>A difference from the guide or the machine file, or a photograph.</summary>
/// <param name="When">When it was noted, in universal time.</param>
/// <param name="Person">By whom.</param>
/// <param name="Subject">What it concerns; may be empty.</param>
/// <param name="Text">What differs, or the caption.</param>
/// <param name="Photo">A JPEG or PNG picture; null when there is none.</param>
/// <param name="PhotoSha256">Hash that names the photograph, hexadecimal; empty when there is none.</param>
public sealed record ReportDeviation(
    DateTimeOffset When,
    string Person,
    string Subject,
    string Text,
    ReadOnlyMemory<byte>? Photo,
    string PhotoSha256);
