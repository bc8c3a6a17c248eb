using System.IO.Compression;

namespace Proveout.Journal.Archive;

/// <summary>The files of a zip, unpacked into memory within limits and under names that an archive may hold.</summary>
internal static class ArchiveFiles
{
    private const int PieceBytes = 81_920;
    private const long FreeOfRatio = 1 << 20;

    /// <exception cref="ArchiveRefusedException">Not a whole zip, a strange name, or too large.</exception>
    public static Dictionary<string, byte[]> Read(Stream zip, ArchiveLimits limits)
    {
        if (zip.Length > limits.MostArchiveBytes)
            throw TooMuch($"it is larger than {limits.MostArchiveBytes >> 20} MB");
        try
        {
            if (ZipDirectory.Count(zip, limits.MostFiles) is not { } count)
                throw new ArchiveRefusedException("The archive has no list of its files at the end: it was cut off, or is no zip. Fetch it again.");
            if (count > limits.MostFiles)
                throw TooMuch($"it lists more than {limits.MostFiles} files");
            zip.Position = 0;
            using var archive = new ZipArchive(zip, ZipArchiveMode.Read, leaveOpen: true);
            return ReadAll(archive, limits);
        }
        catch (Exception cause) when (cause is InvalidDataException or NotSupportedException or EndOfStreamException or IOException or ArgumentException or OverflowException)
        {
            throw new ArchiveRefusedException("The archive cannot be unpacked: it was cut off or altered, or is no zip. Fetch it again.", cause);
        }
    }

    private static Dictionary<string, byte[]> ReadAll(ZipArchive archive, ArchiveLimits limits)
    {
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var left = limits.MostBytes;
        foreach (var packed in archive.Entries)
        {
            if (!ArchiveNames.IsOne(packed.FullName))
                throw new ArchiveRefusedException(
                    $"The archive holds a file `{ArchiveNames.Shown(packed.FullName)}`, which the archive of a build never does. Nothing was taken from it.");
            if (files.ContainsKey(packed.FullName))
                throw new ArchiveRefusedException($"The archive holds `{packed.FullName}` twice. Nothing was taken from it.");
            files[packed.FullName] = Unpack(packed, left, limits);
            left -= files[packed.FullName].Length;
        }
        return files;
    }

    // The lengths that the zip states are not trusted; what comes out is counted.
    private static byte[] Unpack(ZipArchiveEntry packed, long left, ArchiveLimits limits)
    {
        using var from = packed.Open();
        using var unpacked = new MemoryStream();
        var piece = new byte[PieceBytes];
        for (int read; (read = from.Read(piece)) > 0;)
        {
            unpacked.Write(piece, 0, read);
            if (unpacked.Length > left)
                throw TooMuch($"unpacked it holds more than {limits.MostBytes >> 20} MB");
            if (unpacked.Length > FreeOfRatio && unpacked.Length > packed.CompressedLength * limits.MostRatio)
                throw TooMuch($"`{packed.FullName}` is more than {limits.MostRatio} times as large as it is packed");
        }
        return unpacked.ToArray();
    }

    private static ArchiveRefusedException TooMuch(string what) => new($"The archive is too large: {what}. Nothing was taken from it.");
}
