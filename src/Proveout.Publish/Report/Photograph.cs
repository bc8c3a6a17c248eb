namespace Proveout.Publish.Report;

/// <summary>Tells pictures by their first bytes, whatever they claim to be.</summary>
public static class Photograph
{
    private static readonly byte[] Png = [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF];

    /// <summary>Media type of the bytes; null when they are neither PNG (ISO/IEC 15948, 5.2) nor JPEG (ISO/IEC 10918-1, B.2).</summary>
    public static string? MediaType(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith(Png) ? "image/png"
        : bytes.StartsWith(Jpeg) ? "image/jpeg"
        : null;
}
