using System.Buffers.Binary;

namespace Proveout.Workshop;

/// <summary>The segments of a JPEG (ISO/IEC 10918-1, annex B): application data and comments are left out, except what colours and the way up need.</summary>
internal static class JpegSegments
{
    private const byte StartOfScan = 0xDA;
    private const byte EndOfImage = 0xD9;
    private const byte Comment = 0xFE;
    private const byte FirstApplication = 0xE0;
    private const byte LastApplication = 0xEF;
    private const byte ExifApplication = 0xE1;

    /// <summary>The picture alone; null when the file is broken.</summary>
    public static byte[]? Plain(ReadOnlySpan<byte> bytes)
    {
        using var plain = new MemoryStream(bytes.Length);
        plain.Write(bytes[..2]);
        plain.Write(ExifOrientation.Segment(OrientationOf(bytes)));
        var place = 2;
        while (Segment(bytes, place) is { Length: > 0 } segment)
        {
            var marker = segment[1];
            place += segment.Length;
            if (IsPicture(segment))
                plain.Write(segment);
            // Some cameras put further pictures, with a place of their own, behind the end of the first.
            if (marker == EndOfImage)
                return plain.ToArray();
            if (marker != StartOfScan)
                continue;
            var scan = Scan(bytes[place..]);
            plain.Write(scan);
            place += scan.Length;
            if (place == bytes.Length)
                return plain.ToArray();
        }

        return null;
    }

    private static int OrientationOf(ReadOnlySpan<byte> bytes)
    {
        for (var place = 2; Segment(bytes, place) is { Length: > 0 } segment && segment[1] is not (StartOfScan or EndOfImage); place += segment.Length)
        {
            if (segment[1] == ExifApplication && ExifOrientation.Of(segment[4..]) is > 1 and var orientation)
                return orientation;
        }

        return 1;
    }

    // A marker with what belongs to it; empty when there is none here.
    private static ReadOnlySpan<byte> Segment(ReadOnlySpan<byte> bytes, int place)
    {
        if (bytes.Length - place < 2 || bytes[place] != 0xFF)
            return [];
        if (bytes[place + 1] is EndOfImage or 0x01 or (>= 0xD0 and <= 0xD7))
            return bytes.Slice(place, 2);
        if (bytes.Length - place < 4)
            return [];
        var length = BinaryPrimitives.ReadUInt16BigEndian(bytes[(place + 2)..]) + 2;
        return length < 4 || length > bytes.Length - place ? [] : bytes.Slice(place, length);
    }

    // Entropy-coded data goes on until a marker that is neither a stuffed byte nor a restart (B.1.1.5, B.2.1).
    private static ReadOnlySpan<byte> Scan(ReadOnlySpan<byte> bytes)
    {
        for (var place = 0; place < bytes.Length - 1; place++)
        {
            if (bytes[place] == 0xFF && bytes[place + 1] is not (0x00 or 0xFF or (>= 0xD0 and <= 0xD7)))
                return bytes[..place];
        }

        return bytes;
    }

    // Kept: JFIF (its small copy, JFXX, is not), the colour profile, and the colour transform that decoders ask for.
    private static bool IsPicture(ReadOnlySpan<byte> segment) => segment[1] switch
    {
        FirstApplication => segment[4..].StartsWith("JFIF\0"u8) && segment.Length <= 18,
        FirstApplication + 2 => segment[4..].StartsWith("ICC_PROFILE\0"u8),
        FirstApplication + 14 => segment[4..].StartsWith("Adobe"u8) && segment.Length <= 16,
        > FirstApplication and <= LastApplication or Comment => false,
        _ => true,
    };
}
