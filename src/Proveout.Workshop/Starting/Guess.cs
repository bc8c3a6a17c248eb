using System.Text.RegularExpressions;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Something in a machine file that a builder did not say.</summary>
/// <param name="File">The file.</param>
/// <param name="Line">Line of the comment, from 1.</param>
/// <param name="Words">What was guessed.</param>
/// <param name="Thing">What it is about: a designation, or a word of the head.</param>
public sealed partial record Guess(string File, int Line, string Words, string Thing)
{
    /// <summary>How the comment of a guess begins.</summary>
    public const string Opening = "# typical, to be corrected:";

    /// <summary>The guesses that stand in the files of a machine.</summary>
    public static IReadOnlyList<Guess> In(IEnumerable<SourceText> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        return [.. texts.Where(text => text.Text.Contains(Opening, StringComparison.Ordinal)).SelectMany(Of)];
    }

    /// <summary>The text of a file without the line of a guess; null when that line has another text by now.</summary>
    public static string? Without(SourceText text, int line, string words)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = text.Text.Split('\n');
        return line >= 1 && line <= lines.Length && lines[line - 1].Trim() == $"{Opening} {words}"
            ? string.Join('\n', [.. lines[..(line - 1)], .. lines[line..]])
            : null;
    }

    private static IEnumerable<Guess> Of(SourceText text)
    {
        var lines = text.Text.Split('\n');
        for (var index = 0; index < lines.Length; index++)
            if (lines[index].Trim() is var line && line.StartsWith(Opening, StringComparison.Ordinal))
                yield return new(text.File, index + 1, line[Opening.Length..].Trim(), lines.Skip(index + 1).Select(next => Key().Match(next)).FirstOrDefault(match => match.Success)?.Groups[1].Value ?? "");
    }

    [GeneratedRegex(@"^\s*([A-Za-z0-9_.-]+):")]
    private static partial Regex Key();
}
