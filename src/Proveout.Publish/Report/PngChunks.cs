using System.Buffers.Binary;
using System.Text;

namespace Proveout.Publish.Report;

/// <summary>The chunks of a PNG (ISO/IEC 15948, 5.3): only those that the picture needs are kept, so an unknown one cannot carry anything along.</summary>
public static class PngChunks
{
    private const int SignatureBytes = 8;
    private const int FrameBytes = 12;

    private static readonly HashSet<string> Kept = new(StringComparer.Ordinal)
    {
        "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "cHRM", "gAMA", "iCCP", "sBIT", "sRGB", "bKGD", "pHYs",
    };

    /// <summary>The picture alone; null when the file is broken.</summary>
    public static byte[]? Plain(ReadOnlySpan<byte> bytes)
    {
        using var plain = new MemoryStream(bytes.Length);
        plain.Write(bytes[..SignatureBytes]);
        var place = SignatureBytes;
        while (bytes.Length - place >= FrameBytes)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes[place..]);
            if (length > bytes.Length - place - FrameBytes)
                return null;
            var chunk = bytes.Slice(place, (int)length + FrameBytes);
            var name = Encoding.Latin1.GetString(chunk[4..8]);
            if (Kept.Contains(name))
                plain.Write(chunk);
            // What follows the end is no part of the picture.
            if (name == "IEND")
                return plain.ToArray();
            place += chunk.Length;
        }

        return null;
    }
}
