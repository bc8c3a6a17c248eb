using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Archive;

/// <summary>Puts a record together from the files of an archive, each held against the manifest first.</summary>
internal static class ArchiveReader
{
    public static BuildRecord Read(Dictionary<string, byte[]> files)
    {
        var manifest = Manifest(files);
        RequireListed(files, manifest);
        var build = Stored(manifest.Build);
        var entries = Lines(files, ArchiveNames.Entries, ArchiveShapes.Default.EntryShape).Select(shape => Stored(build.Id, shape)).ToList();
        if (entries.Count != manifest.Entries || (entries is [.., var last] ? FieldText.Read(last.Hash) : manifest.Build.Hash) != manifest.LastHash)
            throw new ArchiveRefusedException(
                $"The manifest of the archive says {manifest.Entries} entries up to hash {ArchiveNames.Shown(manifest.LastHash)}, and that is not what is in it.");
        var seals = Lines(files, ArchiveNames.Seals, ArchiveShapes.Default.SealShape).Select(shape => Of(shape, manifest.Build.Id)).ToList();
        var attached = files.Where(file => ArchiveNames.FileOf(file.Key) is not null).ToDictionary(file => ArchiveNames.FileOf(file.Key)!, file => file.Value);
        return new BuildRecord(build, entries, seals, attached);
    }

    private static ManifestShape Manifest(Dictionary<string, byte[]> files)
    {
        if (!files.TryGetValue(ArchiveNames.Manifest, out var text))
            throw new ArchiveRefusedException($"The archive holds no {ArchiveNames.Manifest}: it is not the archive of a build.");
        // The format first: a later one may have fields that are not known here.
        var format = FormatOf(text);
        if (format != ArchiveNames.Format)
            throw new ArchiveRefusedException(
                $"The archive is of the format `{ArchiveNames.Shown(format)}`, and this Proveout reads `{ArchiveNames.Format}`. Read it with a newer Proveout.");
        return Parse(text, ArchiveShapes.Default.ManifestShape, ArchiveNames.Manifest);
    }

    private static string FormatOf(byte[] manifest)
    {
        try
        {
            using var document = JsonDocument.Parse(manifest, new JsonDocumentOptions { MaxDepth = 8 });
            return document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("format", out var format) && format.ValueKind == JsonValueKind.String
                ? format.GetString() ?? ""
                : "";
        }
        catch (Exception cause) when (cause is JsonException or InvalidOperationException)
        {
            throw Unreadable(ArchiveNames.Manifest, cause);
        }
    }

    private static void RequireListed(Dictionary<string, byte[]> files, ManifestShape manifest)
    {
        var listed = new HashSet<string>(StringComparer.Ordinal) { ArchiveNames.Manifest };
        foreach (var file in manifest.Files)
        {
            if (!listed.Add(file.Name) || !files.TryGetValue(file.Name, out var bytes))
                throw new ArchiveRefusedException($"`{ArchiveNames.Shown(file.Name)}` is listed in the manifest of the archive, once too often or without being there.");
            if (bytes.Length != file.Length || Fingerprint.OfBytes(bytes) != file.Sha256)
                throw new ArchiveRefusedException($"`{file.Name}` is not what the manifest of the archive says: it was altered. Fetch the archive again.");
        }
        if (files.Keys.FirstOrDefault(name => !listed.Contains(name)) is { } stranger)
            throw new ArchiveRefusedException($"`{stranger}` is in the archive but not listed in its manifest: it was put in.");
        foreach (var needed in (string[])[ArchiveNames.Entries, ArchiveNames.Seals])
            if (!listed.Contains(needed))
                throw new ArchiveRefusedException($"The archive holds no {needed}.");
    }

    private static IEnumerable<T> Lines<T>(Dictionary<string, byte[]> files, string name, JsonTypeInfo<T> form)
    {
        var rest = files[name].AsMemory();
        while (!rest.IsEmpty)
        {
            var length = rest.Span.IndexOf((byte)'\n');
            if (length < 0)
                throw new ArchiveRefusedException($"The last line of `{name}` in the archive was cut off.");
            yield return Parse(rest[..length].ToArray(), form, name);
            rest = rest[(length + 1)..];
        }
    }

    private static T Parse<T>(byte[] json, JsonTypeInfo<T> form, string name)
    {
        try
        {
            return JsonSerializer.Deserialize(json, form) ?? throw new JsonException("null");
        }
        catch (Exception cause) when (cause is JsonException or NotSupportedException or InvalidOperationException)
        {
            throw Unreadable(name, cause);
        }
    }

    private static Seal Of(SealShape shape, string build)
    {
        try
        {
            return new Seal(
                Guid.ParseExact(build, "D"), shape.Entries, shape.Hash, FieldText.ReadTime(FieldText.Write(shape.Sealed)), shape.Person, shape.PublicKey, shape.Signature);
        }
        catch (FormatException cause)
        {
            throw Unreadable(ArchiveNames.Seals, cause);
        }
    }

    private static StoredBuild Stored(BuildShape build) => new(
        FieldText.Write(build.Id), FieldText.Write(build.Serial), FieldText.Write(build.MachineName), FieldText.Write(build.MachineFingerprint),
        FieldText.Write(build.Builder), FieldText.Write(build.Started), FieldText.Write(build.Hash));

    private static StoredEntry Stored(byte[] build, EntryShape entry) => new(
        build, entry.Sequence, FieldText.Write(entry.Key), FieldText.Write(entry.Recorded), FieldText.Write(entry.Person),
        FieldText.Write(entry.Instrument), FieldText.Write(entry.Content), FieldText.Write(entry.PreviousHash), FieldText.Write(entry.Hash));

    private static ArchiveRefusedException Unreadable(string name, Exception cause) =>
        new($"`{name}` of the archive cannot be read: it is not as Proveout writes it.", cause);
}
