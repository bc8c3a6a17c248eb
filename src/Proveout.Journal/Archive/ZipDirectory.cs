using System.Buffers.Binary;

namespace Proveout.Journal.Archive;

/// <summary>Counts the files that a zip lists before anything is unpacked: an archive of many empty files would fill memory by its list alone.</summary>
internal static class ZipDirectory
{
    private const int EndLength = 22, LongestComment = 65_535, HeaderLength = 46; // PKWARE APPNOTE 4.3.12, 4.3.16
    private const uint EndSignature = 0x06054B50, HeaderSignature = 0x02014B50;

    /// <returns>The number of files listed, at most one more than <paramref name="most"/>; null when there is no list, as in an archive that was cut off.</returns>
    public static int? Count(Stream zip, int most)
    {
        var tail = new byte[(int)Math.Min(zip.Length, EndLength + LongestComment)];
        zip.Position = zip.Length - tail.Length;
        zip.ReadExactly(tail);
        for (var at = tail.Length - EndLength; at >= 0; at--)
            if (BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(at)) == EndSignature)
                return CountFrom(zip, BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(at + 16)), most);
        return null;
    }

    private static int? CountFrom(Stream zip, uint start, int most)
    {
        // All ones: the place is in a further record, for archives of more than four gigabytes.
        if (start == uint.MaxValue)
            return null;
        Span<byte> header = stackalloc byte[HeaderLength];
        var count = 0;
        for (long at = start; count <= most && at + HeaderLength <= zip.Length; count++)
        {
            zip.Position = at;
            zip.ReadExactly(header);
            if (BinaryPrimitives.ReadUInt32LittleEndian(header) != HeaderSignature)
                break;
            at += HeaderLength + BinaryPrimitives.ReadUInt16LittleEndian(header[28..]) + BinaryPrimitives.ReadUInt16LittleEndian(header[30..])
                + BinaryPrimitives.ReadUInt16LittleEndian(header[32..]);
        }
        return count;
    }
}
