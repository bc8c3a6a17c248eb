namespace Proveout.Journal;

/// <summary>A measurement that an analysis made results of; the file it came from is kept beside the record under its fingerprint.</summary>
/// <param name="Analysis">Which analysis, in our own word: <c>tension</c>, <c>frame</c>, <c>level</c>.</param>
/// <param name="Title">What was measured, in a few words.</param>
/// <param name="Summary">What came of it, in a sentence or two.</param>
/// <param name="Results">The figures that matter.</param>
/// <param name="InputsJson">What was typed, as JSON (RFC 8259), so that the analysis can be made again.</param>
/// <param name="FileName">Name of the data file as it was handed over; empty when there is none.</param>
/// <param name="ContentType">Media type of the file; empty when there is none.</param>
/// <param name="Sha256">SHA-256 of the file, 64 lower-case hexadecimal digits; empty when there is none.</param>
/// <param name="Length">Number of bytes of the file; 0 when there is none.</param>
public sealed record MeasurementTaken(
    string Analysis,
    string Title,
    string Summary,
    IReadOnlyList<MeasuredResult> Results,
    string InputsJson,
    string FileName,
    string ContentType,
    string Sha256,
    long Length) : EntryContent
{
    /// <summary>Equal when every field is, results in order.</summary>
    public bool Equals(MeasurementTaken? other) =>
        other is not null
        && (Analysis, Title, Summary, InputsJson, FileName, ContentType, Sha256, Length)
            == (other.Analysis, other.Title, other.Summary, other.InputsJson, other.FileName, other.ContentType, other.Sha256, other.Length)
        && Results.SequenceEqual(other.Results);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Analysis, Title, Summary, InputsJson, Sha256, Results.Count);
}
