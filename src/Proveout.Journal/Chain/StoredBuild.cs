namespace Proveout.Journal.Chain;

/// <summary>A build as the store holds it: each field the exact UTF-8 bytes, so that no change hides behind decoding.</summary>
internal sealed record StoredBuild(
    byte[] Id, byte[] Serial, byte[] MachineName, byte[] MachineFingerprint, byte[] Builder, byte[] Started, byte[] Hash)
{
    public static StoredBuild From(BuildDraft draft, DateTimeOffset started)
    {
        var unsealed = new StoredBuild(
            FieldText.Write(draft.Id), FieldText.Write(draft.Serial), FieldText.Write(draft.MachineName),
            FieldText.Write(draft.MachineFingerprint), FieldText.Write(draft.Builder), FieldText.Write(started), []);
        return unsealed with { Hash = unsealed.ComputeHash() };
    }

    public byte[] ComputeHash() =>
        CanonicalForm.Hash("proveout-build 1"u8, Id, Serial, MachineName, MachineFingerprint, Builder, Started);

    public Build Decode() => new(
        FieldText.ReadGuid(Id), FieldText.Read(Serial), FieldText.Read(MachineName), FieldText.Read(MachineFingerprint),
        FieldText.Read(Builder), FieldText.ReadTime(Started));
}
