using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Proveout.Fuzz;

/// <summary>Changes an archive from within: a file of it, its name, or how often it is there; then packs it anew with the right lengths and digests.</summary>
internal static class ArchiveChange
{
    private const string Manifest = "manifest.json";
    private const int MostBytes = 1 << 20;

    private static readonly string[] Names =
    [
        "../entries.jsonl", "..\\..\\x", "/etc/passwd", "C:\\x", "CON", "files/", "files/../manifest.json", "files/x", "manifest.json ", "Manifest.json", "entries.jsonl.", " ", "a\0b", "\u202Egpj.exe", "\u001b[31mred",
    ];

    public static byte[] Of(Mutator mutator, byte[] archive, byte[] other)
    {
        var (random, files) = (mutator.Random, Unpacked(archive));
        if (files.Count == 0)
            return mutator.Change(archive, other);
        var at = random.Next(files.Count);
        var (name, bytes) = files[at];
        switch (random.Next(8))
        {
            case 0:
                files[at] = (Names[random.Next(Names.Length)], bytes);
                break;
            case 1:
                files.Add((name, bytes));
                break;
            case 2:
                files[at] = (name, new byte[random.Next(1 << 22)]);
                break;
            default:
                files[at] = (name, mutator.Change(bytes, files[random.Next(files.Count)].Bytes));
                break;
        }

        return Packed(random.Next(4) == 0 ? files : WithDigests(files));
    }

    private static List<(string Name, byte[] Bytes)> Unpacked(byte[] archive)
    {
        var files = new List<(string, byte[])>();
        try
        {
            using var zip = new ZipArchive(new MemoryStream(archive), ZipArchiveMode.Read);
            foreach (var entry in zip.Entries.Take(50))
            {
                var bytes = new byte[MostBytes];
                using var from = entry.Open();
                files.Add((entry.FullName, bytes[..from.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)]));
            }
        }
        catch (Exception exception) when (exception is InvalidDataException or IOException or NotSupportedException or ArgumentException or OverflowException)
        {
            // An archive that was damaged before is changed by its bytes.
            return [];
        }

        return files;
    }

    private static List<(string Name, byte[] Bytes)> WithDigests(List<(string Name, byte[] Bytes)> files)
    {
        try
        {
            if (files.FirstOrDefault(file => file.Name == Manifest).Bytes is not { } bytes || JsonNode.Parse(bytes) is not JsonObject manifest)
                return files;
            manifest["files"] = new JsonArray([.. files.Where(file => file.Name != Manifest).Select(file => new JsonObject
            {
                ["name"] = file.Name, ["length"] = file.Bytes.Length, ["sha256"] = Convert.ToHexStringLower(SHA256.HashData(file.Bytes)),
            })]);
            return [.. files.Select(file => file.Name == Manifest ? (file.Name, JsonSerializer.SerializeToUtf8Bytes(manifest)) : file)];
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException or ArgumentException)
        {
            // A manifest that was changed itself stays as it is.
            return files;
        }
    }

    private static byte[] Packed(List<(string Name, byte[] Bytes)> files)
    {
        using var target = new MemoryStream();
        using (var zip = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in files.Where(file => file.Name.Length > 0))
            {
                using var packed = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
                packed.Write(bytes);
            }
        }

        return target.ToArray();
    }
}
