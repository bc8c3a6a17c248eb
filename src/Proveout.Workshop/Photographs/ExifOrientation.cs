using System.Buffers.Binary;

namespace Proveout.Workshop;

/// <summary>Which way up a camera was held: the one thing of its notes that the picture needs (Exif 2.3, 4.6.4, tag 0x0112).</summary>
internal static class ExifOrientation
{
    private const ushort Tag = 0x0112;
    private const ushort ShortType = 3;
    private const int EntryBytes = 12;

    /// <summary>1 to 8 as the standard numbers them; 1 when nothing is said.</summary>
    /// <param name="body">The application segment without its marker and length.</param>
    public static int Of(ReadOnlySpan<byte> body)
    {
        if (!body.StartsWith("Exif\0\0"u8) || body.Length < 14)
            return 1;
        var tiff = body[6..];
        var isBig = tiff.StartsWith("MM"u8);
        if (!isBig && !tiff.StartsWith("II"u8))
            return 1;
        var directory = isBig ? BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]);
        if (directory > tiff.Length - 2)
            return 1;
        var count = Short(tiff[(int)directory..], isBig);
        for (var entry = 0; entry < count; entry++)
        {
            var place = (long)directory + 2 + (entry * EntryBytes);
            if (place + EntryBytes > tiff.Length)
                return 1;
            var field = tiff.Slice((int)place, EntryBytes);
            if (Short(field, isBig) == Tag && Short(field[2..], isBig) == ShortType)
                return Short(field[8..], isBig) is >= 1 and <= 8 and var orientation ? orientation : 1;
        }

        return 1;
    }

    /// <summary>A segment that says the orientation and nothing else; empty when the picture is upright as it is.</summary>
    public static byte[] Segment(int orientation) => orientation == 1
        ? []
        :
        [
            0xFF, 0xE1, 0x00, 0x22, .. "Exif\0\0"u8, .. "MM\0*"u8, 0, 0, 0, 8,
            0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0,
        ];

    private static ushort Short(ReadOnlySpan<byte> bytes, bool isBig) =>
        isBig ? BinaryPrimitives.ReadUInt16BigEndian(bytes) : BinaryPrimitives.ReadUInt16LittleEndian(bytes);
}
