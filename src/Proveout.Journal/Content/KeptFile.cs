namespace Proveout.Journal;

/// <summary>The file that an entry keeps beside the record.</summary>
/// <param name="Word">What it is, for a sentence.</param>
/// <param name="FileName">Its name.</param>
/// <param name="Sha256">SHA-256 of its bytes.</param>
/// <param name="Length">Number of bytes.</param>
internal sealed record KeptFile(string Word, string FileName, string Sha256, long Length)
{
    /// <summary>The file of a content; null when it keeps none.</summary>
    public static KeptFile? Of(EntryContent content) => content switch
    {
        PhotoAttached photo => new("photograph", photo.FileName, photo.Sha256, photo.Length),
        MeasurementTaken { Sha256.Length: > 0 } taken => new("data file", taken.FileName, taken.Sha256, taken.Length),
        _ => null,
    };
}
