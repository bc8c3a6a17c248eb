namespace Proveout.Publish.Drawings;

/// <summary>Breaks words into lines of a width.</summary>
internal static class TextBlock
{
    /// <summary>Lines that a text takes; a word that is too wide stands alone on its line.</summary>
    public static IReadOnlyList<string> Lines(string text, TextStyle style, double width)
    {
        var lines = new List<string>();
        foreach (var word in PlainText.Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            if (lines.Count > 0 && style.Width($"{lines[^1]} {word}") <= width)
                lines[^1] = $"{lines[^1]} {word}";
            else
                lines.Add(word);
        return lines;
    }
}
