namespace Proveout.Engine.Machine;

/// <summary>A text file that someone else has read.</summary>
/// <param name="File">File name as the user gave it.</param>
/// <param name="Text">Its text.</param>
public sealed record SourceText(string File, string Text)
{
    /// <summary>Largest file that is read, in bytes: some 80 000 conductors, far beyond any machine that one person wires.</summary>
    public const int LargestFile = 8 * 1024 * 1024;

    /// <summary>Makes text of bytes: UTF-8, with or without a byte-order mark.</summary>
    /// <param name="file">File name as the user gave it.</param>
    /// <param name="bytes">The file's content.</param>
    public static Outcome<SourceText> Decode(string file, ReadOnlySpan<byte> bytes) => TextDecoder.Decode(file, bytes);
}
