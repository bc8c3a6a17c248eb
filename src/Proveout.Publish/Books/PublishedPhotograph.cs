using StbImageSharp;
using StbImageWriteSharp;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>
/// A photograph made ready to be handed to strangers: drawn anew from its pixels, so that nothing goes along that a camera wrote beside them (place, time,
/// owner, serial number, a small copy of what was cut away), upright, and no larger than a page needs.
/// </summary>
/// <param name="Width">Width in pixels.</param>
/// <param name="Height">Height in pixels.</param>
/// <param name="Jpeg">The picture as JPEG (ISO/IEC 10918-1) without any metadata.</param>
public sealed record PublishedPhotograph(int Width, int Height, ReadOnlyMemory<byte> Jpeg)
{
    /// <summary>Longest side in pixels: fills a page of a desktop screen, common practice.</summary>
    public const int LongestSide = 1400;

    // A picture that claims more would take half a gigabyte to unfold; cameras of telephones stay below.
    private const long MostPixels = 120_000_000;

    // Each scan of a JPEG goes over all of them: a camera writes one, or some ten that sharpen the picture step by step, and one in each small copy beside it.
    private const long MostScannedPixels = 500_000_000;

    // A camera leaves a byte for some ten pixels, a blank screen one for some hundreds: what claims more would be unfolded from next to nothing.
    private const long MostPixelsAByte = 1000;
    private const long SmallPixels = 1_000_000;
    private const int Quality = 80;

    // ITU-T T.81, table B.1.
    private static ReadOnlySpan<byte> StartOfScan => [0xFF, 0xDA];

    /// <summary>The photograph made ready; null when it is damaged, too large, or neither PNG nor JPEG.</summary>
    /// <param name="bytes">The file as it was attached.</param>
    public static PublishedPhotograph? Of(ReadOnlyMemory<byte> bytes)
    {
        if (Whole(bytes.Span) is not { } whole)
            return null;
        try
        {
            using var stream = new EndingStream(whole);
            if (ImageInfo.FromStream(stream) is not { Width: > 0, Height: > 0 } info || IsTooLarge((long)info.Width * info.Height, whole))
                return null;
            stream.Position = 0;
            var image = ImageResult.FromStream(stream, StbImageSharp.ColorComponents.RedGreenBlueAlpha);
            return Write(Pixels.OnWhite(image.Width, image.Height, image.Data).Within(LongestSide).Turned(PhotographTurn.Of(bytes.Span)));
        }
#pragma warning disable CA1031 // A damaged photograph must not cost the book; its decoder throws whatever it happens to throw.
        catch (Exception)
#pragma warning restore CA1031
        {
            return null;
        }
    }

    // The decoder of PNG makes room for whatever length a chunk claims, so chunks that lie outside the file are looked for first.
    private static byte[]? Whole(ReadOnlySpan<byte> bytes) => Photograph.MediaType(bytes) switch
    {
        "image/png" => PngChunks.Plain(bytes),
        null => null,
        _ => bytes.ToArray(),
    };

    private static bool IsTooLarge(long pixels, byte[] file)
    {
        var scans = Photograph.MediaType(file) == "image/jpeg" ? file.AsSpan().Count(StartOfScan) : 1;
        var scanned = pixels * Math.Max(1, scans);
        return pixels > MostPixels || scanned > MostScannedPixels || (scanned > SmallPixels && scanned > MostPixelsAByte * file.Length);
    }

    private static PublishedPhotograph Write(Pixels pixels)
    {
        using var file = new MemoryStream();
        new ImageWriter().WriteJpg(pixels.Rgb, pixels.Width, pixels.Height, StbImageWriteSharp.ColorComponents.RedGreenBlue, file, Quality);
        return new(pixels.Width, pixels.Height, file.ToArray());
    }
}
