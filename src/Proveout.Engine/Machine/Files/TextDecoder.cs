using System.Buffers;
using System.Text;

namespace Proveout.Engine.Machine;

/// <summary>Turns bytes into text, and refuses what is not UTF-8 text.</summary>
internal static class TextDecoder
{
    private const string SaveAsUtf8 = "Save it as UTF-8 text.";

    // C0 control characters but tab, line feed and carriage return, and DEL: no text has them, and most other kinds of file do.
    private static readonly SearchValues<byte> Controls =
        SearchValues.Create([.. Enumerable.Range(0, 32).Select(code => (byte)code).Where(code => code is not (9 or 10 or 13)), 127]);

    public static Outcome<SourceText> Decode(string file, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > SourceText.LargestFile)
            return Refuse(
                new(file, 0, 0),
                "file-too-large",
                $"The file is larger than {SourceText.LargestFile / (1024 * 1024)} MiB.",
                "Is it the right file? If so, split it into a folder of several.");
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [0, not 0, ..] or [not 0, 0, ..])
            return Refuse(new(file, 0, 0), "wrong-encoding", "The file is UTF-16 or UTF-32 text, not UTF-8.", SaveAsUtf8);
        if (bytes is [0xEF, 0xBB, 0xBF, ..])
            bytes = bytes[3..];
        if (bytes.IndexOfAny(Controls) is >= 0 and var control)
            return Refuse(
                PlaceOf(file, bytes[..control]),
                "not-text",
                $"The byte 0x{bytes[control]:X2} here does not belong in text; the file is binary, or damaged.",
                "Give a text file in YAML.");
        return FirstInvalid(bytes) is { } invalid
            ? Refuse(
                PlaceOf(file, bytes[..invalid]),
                "wrong-encoding",
                $"The byte 0x{bytes[invalid]:X2} here is not valid UTF-8.",
                SaveAsUtf8)
            : Outcome.Of(new SourceText(file, Encoding.UTF8.GetString(bytes)));
    }

    private static int? FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        if (System.Text.Unicode.Utf8.IsValid(bytes))
            return null;
        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done)
            at += length;
        return at;
    }

    private static SourcePlace PlaceOf(string file, ReadOnlySpan<byte> before)
    {
        var line = before.Count((byte)'\n') + 1;
        var column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return new(file, line, column);
    }

    private static Outcome<SourceText> Refuse(SourcePlace place, string rule, string message, string mend) =>
        Outcome.Refused<SourceText>([new(rule, place, message, mend)]);
}
