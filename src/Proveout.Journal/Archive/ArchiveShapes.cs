using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Proveout.Journal.Archive;

/// <summary>The texts of an archive: docs/methods/durability.md describes them.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true, MaxDepth = 8)]
[JsonSerializable(typeof(ManifestShape))]
[JsonSerializable(typeof(EntryShape))]
[JsonSerializable(typeof(SealShape))]
internal sealed partial class ArchiveShapes : JsonSerializerContext
{
    // Legible to whoever opens the archive by hand; never put into a page as it is.
    public static ArchiveShapes Legible { get; } = new(Layout(isSpread: false));

    public static ArchiveShapes Spread { get; } = new(Layout(isSpread: true));

    private static JsonSerializerOptions Layout(bool isSpread) => new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = isSpread,
        NewLine = "\n",
    };
}

internal sealed record ManifestShape(string Format, BuildShape Build, int Entries, string LastHash, IReadOnlyList<FileShape> Files);

internal sealed record BuildShape(
    string Id, string Serial, string MachineName, string MachineFingerprint, string Builder, string Started, string Hash);

internal sealed record FileShape(string Name, long Length, string Sha256);

/// <summary>The content stands as a text, so that it stays the exact bytes that were hashed.</summary>
internal sealed record EntryShape(
    long Sequence, string Key, string Recorded, string Person, string Instrument, string Content, string PreviousHash, string Hash);

internal sealed record SealShape(int Entries, string Hash, string Sealed, string Person, string PublicKey, string Signature);
