using System.Text.Json;

namespace Proveout.Journal.Chain;

/// <summary>An entry as the store holds it: each field the exact UTF-8 bytes, so that no change hides behind decoding.</summary>
internal sealed record StoredEntry(
    byte[] BuildId, long Sequence, byte[] Key, byte[] Recorded, byte[] Person, byte[] Instrument, byte[] Content,
    byte[] PreviousHash, byte[] Hash)
{
    /// <summary>What the hash of an entry begins with.</summary>
    public static ReadOnlySpan<byte> Title => "proveout-entry 1"u8;

    public static StoredEntry From(Guid buildId, EntryDraft draft, DateTimeOffset recorded, StoredEnd end)
    {
        var unsealed = new StoredEntry(
            FieldText.Write(buildId), end.Entries + 1, FieldText.Write(draft.Key), FieldText.Write(recorded),
            FieldText.Write(draft.Person), FieldText.Write(draft.Instrument), ContentText.Write(draft.Content), end.Hash, []);
        return unsealed with { Hash = unsealed.ComputeHash() };
    }

    public byte[] ComputeHash() =>
        CanonicalForm.Hash(
            Title, PreviousHash, BuildId, FieldText.Write(Sequence), Key, Recorded, Person, Instrument, Content);

    /// <summary>Whether the entry was made from an equal draft for the same build.</summary>
    public bool IsOf(Guid buildId, EntryDraft draft) =>
        BuildId.AsSpan().SequenceEqual(FieldText.Write(buildId))
        && Person.AsSpan().SequenceEqual(FieldText.Write(draft.Person))
        && Instrument.AsSpan().SequenceEqual(FieldText.Write(draft.Instrument))
        && Content.AsSpan().SequenceEqual(ContentText.Write(draft.Content));

    /// <exception cref="JournalDamagedException">A field holds what no entry can hold.</exception>
    public Entry Decode()
    {
        try
        {
            return new Entry(
                FieldText.ReadGuid(BuildId), checked((int)Sequence), FieldText.ReadGuid(Key), FieldText.ReadTime(Recorded),
                FieldText.Read(Person), FieldText.Read(Instrument), ContentText.Read(Content),
                FieldText.Read(PreviousHash), FieldText.Read(Hash));
        }
        catch (Exception cause) when (cause is FormatException or JsonException or NotSupportedException or OverflowException)
        {
            throw new JournalDamagedException(
                $"Entry {Sequence} of build {FieldText.Read(BuildId)} cannot be read: it is not as Proveout records entries. "
                + "Verify the build, and go back to a copy of the journal that is whole.", cause);
        }
    }
}
