using Proveout.Publish.Report;

namespace Proveout.Workshop;

/// <summary>A photograph without what a camera writes beside the picture: place, time, device, names, small copies.</summary>
public static class PlainPhotograph
{
    /// <summary>The picture alone, the same for the same bytes; null when the file is broken, or is neither JPEG nor PNG.</summary>
    public static byte[]? Of(ReadOnlyMemory<byte> bytes) => bytes.Span switch
    {
        [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, ..] => PngChunks.Plain(bytes.Span),
        [0xFF, 0xD8, 0xFF, ..] => JpegSegments.Plain(bytes.Span),
        _ => null,
    };
}
