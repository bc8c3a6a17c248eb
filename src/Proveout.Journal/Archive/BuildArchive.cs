using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Proveout.Journal.Archive;
using Proveout.Journal.Chain;

namespace Proveout.Journal;

/// <summary>The record of one build as an open archive: a zip of JSON and of the files as they were attached, with a digest of each.</summary>
public static class BuildArchive
{
    // The earliest that a zip can say: the same record always gives the same bytes.
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Writes a record.</summary>
    /// <exception cref="RecordRefusedException">The record is not whole, so that it could not be read back.</exception>
    public static void Write(BuildRecord record, Stream target)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (record.Verify() is ChainBroken broken)
            throw new RecordRefusedException($"The record is broken and was not exported. {broken.Sentence} A backup of the journal keeps it as it is.");
        var files = new List<(string Name, byte[] Bytes)>
        {
            (ArchiveNames.Entries, Lines(record.StoredEntries.Select(Shape), ArchiveShapes.Legible.EntryShape)),
            (ArchiveNames.Seals, Lines(record.Seals.Select(Shape), ArchiveShapes.Legible.SealShape)),
        };
        files.AddRange(record.Files.OrderBy(file => file.Key, StringComparer.Ordinal).Select(file => (ArchiveNames.OfFile(file.Key), file.Value)));
        var manifest = new ManifestShape(
            ArchiveNames.Format, Shape(record.Stored), record.Entries, record.LastHash,
            [.. files.Select(file => new FileShape(file.Name, file.Bytes.Length, Fingerprint.OfBytes(file.Bytes)))]);
        using var zip = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true);
        Pack(zip, ArchiveNames.Manifest, JsonSerializer.SerializeToUtf8Bytes(manifest, ArchiveShapes.Spread.ManifestShape));
        foreach (var (name, bytes) in files)
            Pack(zip, name, bytes);
    }

    /// <summary>Reads a record; it is what was written, or it is refused.</summary>
    /// <exception cref="ArchiveRefusedException">The archive is cut off, altered, too large, or none; the sentence says what is wrong.</exception>
    public static BuildRecord Read(Stream source, ArchiveLimits limits)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(limits);
        var record = ArchiveReader.Read(ArchiveFiles.Read(source, limits));
        try
        {
            return record.Verify() is ChainBroken broken
                ? throw new ArchiveRefusedException($"The archive does not hold the record as it was written. {broken.Sentence} Nothing was taken from it.")
                : record;
        }
        catch (JournalDamagedException cause)
        {
            throw new ArchiveRefusedException($"{cause.Message} The archive may come from a newer Proveout; nothing was taken from it.", cause);
        }
    }

    private static void Pack(ZipArchive zip, string name, byte[] bytes)
    {
        var packed = zip.CreateEntry(name, CompressionLevel.Optimal);
        packed.LastWriteTime = NoTime;
        using var target = packed.Open();
        target.Write(bytes);
    }

    private static byte[] Lines<T>(IEnumerable<T> shapes, JsonTypeInfo<T> form)
    {
        using var lines = new MemoryStream();
        foreach (var shape in shapes)
        {
            JsonSerializer.Serialize(lines, shape, form);
            lines.WriteByte((byte)'\n');
        }
        return lines.ToArray();
    }

    private static BuildShape Shape(StoredBuild build) => new(
        FieldText.Read(build.Id), FieldText.Read(build.Serial), FieldText.Read(build.MachineName), FieldText.Read(build.MachineFingerprint),
        FieldText.Read(build.Builder), FieldText.Read(build.Started), FieldText.Read(build.Hash));

    private static EntryShape Shape(StoredEntry entry) => new(
        entry.Sequence, FieldText.Read(entry.Key), FieldText.Read(entry.Recorded), FieldText.Read(entry.Person), FieldText.Read(entry.Instrument),
        FieldText.Read(entry.Content), FieldText.Read(entry.PreviousHash), FieldText.Read(entry.Hash));

    private static SealShape Shape(Seal seal) => new(
        seal.Entries, seal.Hash, FieldText.Read(FieldText.Write(seal.Sealed)), seal.Person, seal.PublicKey, seal.Signature);
}
