namespace Proveout.Journal;

/// <summary>An entry about to be recorded.</summary>
/// <param name="Key">Made by the caller, once for each thing to record, so that sending the draft again does no harm.</param>
/// <param name="Person">Who did or saw it; not blank.</param>
/// <param name="Instrument">What it was measured with; empty where nothing was.</param>
/// <param name="Content">What is to be recorded.</param>
public sealed record EntryDraft(Guid Key, string Person, string Instrument, EntryContent Content)
{
    /// <summary>The bytes of the photograph; only with <see cref="PhotoAttached"/>.</summary>
    public ReadOnlyMemory<byte> PhotoBytes { get; init; }

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
            PhotoBytes = bytes,
        };
}
