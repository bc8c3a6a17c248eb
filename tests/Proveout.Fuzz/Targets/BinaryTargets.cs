using System.Text;
using Proveout.Engine.Motion;
using Proveout.Publish.Books;
using Proveout.Workshop;

namespace Proveout.Fuzz;

/// <summary>What reads recordings of sound and photographs.</summary>
internal static class BinaryTargets
{
    private static readonly Dictionary<string, string> Belt = new(StringComparer.Ordinal) { ["span"] = "300", ["mass"] = "8" };

    public static IReadOnlyList<FuzzTarget> All { get; } =
    [
        new("wav", Wav) { Tokens = [.. Tokens("RIFF", "WAVE", "fmt ", "data", "LIST", "fact"), [0xFE, 0xFF], [3, 0], [0xFF, 0xFF, 0xFF, 0xFF], [0, 0, 0, 0]] },
        // A picture within the limit of pixels is unfolded whole, four bytes to a pixel, twice.
        new("picture", Picture)
        {
            Tokens = [.. Tokens("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "iCCP", "eXIf", "tEXt", "Exif\0\0", "MM\0*", "II*\0", "JFIF\0", "ICC_PROFILE\0", "Adobe"), [0xFF, 0xD8], [0xFF, 0xD9], [0xFF, 0xDA], [0xFF, 0xC0], [0xFF, 0xC2], [0xFF, 0xC4], [0xFF, 0xDB], [0xFF, 0xDD], [0xFF, 0xE1], [0xFF, 0xFF]],
            MostAllocated = 1L << 30,
        },
    ];

    private static string Wav(byte[] input) =>
        $"{Told.Of(WavReader.Read(input, "sound.wav"))} / {Told.Of(Sounding.Of(new([new SoundFile("sound.wav", input)], Belt)))}";

    private static string Picture(byte[] input)
    {
        var plain = PlainPhotograph.Of(input);
        if (plain is not null && (PlainPhotograph.Of(plain) is not { } again || !again.AsSpan().SequenceEqual(plain)))
            throw new InvalidOperationException("A photograph that was made plain is not plain.");
        if (plain is not null && plain.AsSpan().IndexOf("GPS"u8) >= 0 && input.AsSpan().IndexOf("tEXtGPS"u8) >= 0)
            throw new InvalidOperationException("A place went along.");
        var published = PublishedPhotograph.Of(input);
        return $"{input.Length > 2 && input[0] == 0xFF} {plain is not null} {plain?.Length == input.Length} {Sides(published)}";
    }

    private static string Sides(PublishedPhotograph? picture) => picture is null ? "none" : $"{int.Log2(picture.Width)} x {int.Log2(picture.Height)}";

    private static IEnumerable<byte[]> Tokens(params string[] words) => words.Select(Encoding.Latin1.GetBytes);
}
