namespace Proveout.Journal.Chain;

/// <summary>A build as the store holds it: each field the exact UTF-8 bytes, so that no change hides behind decoding.</summary>
internal sealed record StoredBuild(
    byte[] Id, byte[] Serial, byte[] MachineName, byte[] MachineFingerprint, byte[] Builder, byte[] Started, byte[] Hash)
{
    /// <summary>What the hash of a build begins with.</summary>
    public static ReadOnlySpan<byte> Title => "proveout-build 1"u8;

    public static StoredBuild From(BuildDraft draft, DateTimeOffset started)
    {
        var unsealed = new StoredBuild(
            FieldText.Write(draft.Id), FieldText.Write(draft.Serial), FieldText.Write(draft.MachineName),
            FieldText.Write(draft.MachineFingerprint), FieldText.Write(draft.Builder), FieldText.Write(started), []);
        return unsealed with { Hash = unsealed.ComputeHash() };
    }

    public byte[] ComputeHash() =>
        CanonicalForm.Hash(Title, Id, Serial, MachineName, MachineFingerprint, Builder, Started);

    /// <exception cref="JournalDamagedException">A field holds what no build can hold.</exception>
    public Build Decode()
    {
        try
        {
            return new Build(
                FieldText.ReadGuid(Id), FieldText.Read(Serial), FieldText.Read(MachineName), FieldText.Read(MachineFingerprint),
                FieldText.Read(Builder), FieldText.ReadTime(Started));
        }
        catch (FormatException cause)
        {
            throw new JournalDamagedException(
                $"The record of build {FieldText.Read(Id)} cannot be read: it is not as Proveout records builds. "
                + "Go back to a copy of the journal that is whole.", cause);
        }
    }
}
