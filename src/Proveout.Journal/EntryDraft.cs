namespace Proveout.Journal;

/// <summary>An entry about to be recorded.</summary>
/// <param name="Key">Made by the caller, once for each thing to record, so that sending the draft again does no harm.</param>
/// <param name="Person">Who did or saw it; not blank.</param>
/// <param name="Instrument">What it was measured with; empty where nothing was.</param>
/// <param name="Content">What is to be recorded.</param>
public sealed record EntryDraft(Guid Key, string Person, string Instrument, EntryContent Content)
{
    /// <summary>The bytes of the photograph or data file; only with <see cref="PhotoAttached"/> and <see cref="MeasurementTaken"/>.</summary>
    public ReadOnlyMemory<byte> FileBytes { get; init; }

    /// <summary>A draft that attaches a photograph, with length and fingerprint taken from its bytes.</summary>
    /// <param name="key">As <see cref="Key"/>.</param>
    /// <param name="person">Who attaches it.</param>
    /// <param name="subject">Id of the check, or any other thing that the photograph shows.</param>
    /// <param name="fileName">Name of the file as it was handed over.</param>
    /// <param name="contentType">Media type, <c>image/…</c>.</param>
    /// <param name="bytes">The photograph, not empty.</param>
    /// <param name="caption">What is to be seen; may be empty.</param>
    public static EntryDraft OfPhoto(
        Guid key, string person, string subject, string fileName, string contentType, ReadOnlyMemory<byte> bytes, string caption) =>
        new(key, person, "", new PhotoAttached(subject, fileName, contentType, Fingerprint.OfBytes(bytes.Span), bytes.Length, caption))
        {
            FileBytes = bytes,
        };

    /// <summary>A draft that records a measurement with its data file, of which length and fingerprint are taken from the bytes.</summary>
    /// <param name="key">As <see cref="Key"/>.</param>
    /// <param name="person">Who measured.</param>
    /// <param name="taken">The measurement; fingerprint and length are put in here.</param>
    /// <param name="bytes">The data file; empty when the measurement was typed.</param>
    public static EntryDraft OfMeasurement(Guid key, string person, MeasurementTaken taken, ReadOnlyMemory<byte> bytes)
    {
        ArgumentNullException.ThrowIfNull(taken);
        return new(key, person, "", bytes.IsEmpty
            ? taken with { FileName = "", ContentType = "", Sha256 = "", Length = 0 }
            : taken with { Sha256 = Fingerprint.OfBytes(bytes.Span), Length = bytes.Length })
        {
            FileBytes = bytes,
        };
    }
}
