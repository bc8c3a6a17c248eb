using System.Buffers.Binary;

namespace Proveout.Publish.Books;

/// <summary>How the camera was held: what has to be done to the pixels so that up is up.</summary>
/// <param name="ExchangesSides">True when width and height change places.</param>
/// <param name="FromRight">True when the first column of the source is at the right, or at the bottom.</param>
/// <param name="FromBottom">True when the first row of the source is at the bottom, or at the right.</param>
internal sealed record PhotographTurn(bool ExchangesSides, bool FromRight, bool FromBottom)
{
    /// <summary>Nothing.</summary>
    public static readonly PhotographTurn None = new(false, false, false);

    private const int OrientationTag = 0x0112;

    /// <summary>What a JPEG says of it: tag Orientation of TIFF 6.0 (section 8) in segment APP1 as CIPA DC-008 (Exif 2.32, 4.6.4) lays it down; nothing when it says nothing.</summary>
    public static PhotographTurn Of(ReadOnlySpan<byte> file) => OrientationOf(file) switch
    {
        2 => new(false, true, false),
        3 => new(false, true, true),
        4 => new(false, false, true),
        5 => new(true, false, false),
        6 => new(true, false, true),
        7 => new(true, true, true),
        8 => new(true, true, false),
        _ => None,
    };

    /// <summary>The pixel of the source that comes to a place.</summary>
    public (int X, int Y) From(int x, int y, int width, int height)
    {
        var (sourceX, sourceY) = ExchangesSides ? (y, x) : (x, y);
        return (FromRight ? width - 1 - sourceX : sourceX, FromBottom ? height - 1 - sourceY : sourceY);
    }

    private static int OrientationOf(ReadOnlySpan<byte> file)
    {
        // Segments follow each other until the picture itself starts (ISO/IEC 10918-1, B.1.1.4).
        for (var at = 2; at + 4 <= file.Length && file[at] == 0xFF && file[at + 1] != 0xDA; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]))
            if (file[at + 1] == 0xE1 && file[(at + 4)..].StartsWith("Exif\0\0"u8))
                return OrientationOfTiff(file[(at + 10)..]);
        return 1;
    }

    private static int OrientationOfTiff(ReadOnlySpan<byte> tiff)
    {
        if (tiff.Length < 8)
            return 1;
        var isLittle = tiff[0] == (byte)'I';
        var at = (long)(isLittle ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]));
        if (at + 2 > tiff.Length)
            return 1;
        var count = Short(tiff, (int)at, isLittle);
        for (var entry = 0; entry < count && at + 2 + (12 * (entry + 1)) <= tiff.Length; entry++)
            if (Short(tiff, (int)at + 2 + (12 * entry), isLittle) == OrientationTag)
                return Short(tiff, (int)at + 10 + (12 * entry), isLittle);
        return 1;
    }

    private static int Short(ReadOnlySpan<byte> tiff, int at, bool isLittle) =>
        isLittle ? BinaryPrimitives.ReadUInt16LittleEndian(tiff[at..]) : BinaryPrimitives.ReadUInt16BigEndian(tiff[at..]);
}
