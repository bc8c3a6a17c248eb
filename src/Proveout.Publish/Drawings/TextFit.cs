using System.Text;

namespace Proveout.Publish.Drawings;

/// <summary>Keeps words inside their place when the font that will draw them is not known.</summary>
internal static class TextFit
{
    /// <summary>A width that common sans-serif fonts do not exceed, in the unit of the size. Widths measured on two free sans-serif families.</summary>
    public static double Width(string text, double size, bool bold = false) =>
        PlainText.Characters(text).Sum(Ems) * size * (bold ? 1.1 : 1);

    /// <summary>The text, or its beginning and end with an ellipsis between them: names differ at their end more often than in their middle.</summary>
    public static string Fit(string text, double width, double size, bool bold = false)
    {
        if (Width(text, size, bold) <= width)
            return text;
        var characters = PlainText.Characters(text);
        for (var kept = characters.Count - 1; kept > 0; kept--)
        {
            var candidate = Shorten(characters, kept);
            if (Width(candidate, size, bold) <= width)
                return candidate;
        }

        return "…";
    }

    private static string Shorten(IReadOnlyList<string> characters, int kept)
    {
        var head = (kept + 1) / 2;
        var shortened = new StringBuilder().AppendJoin("", characters.Take(head)).Append('…');
        return shortened.AppendJoin("", characters.Skip(characters.Count - (kept - head))).ToString();
    }

    private static double Ems(string character) => Rune.GetRuneAt(character, 0).Value switch
    {
        'i' or 'j' or 'l' or 'I' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' or ' ' => 0.34,
        'f' or 't' or 'r' or '-' or '(' or ')' or '/' => 0.42,
        'm' or 'w' or 'M' or 'W' or '%' or '@' or '…' => 1.0,
        '+' or '=' or '<' or '>' or '~' or '±' => 0.84,
        >= 'A' and <= 'Z' => 0.76,
        >= 0x1100 => 1.1,
        _ => 0.64,
    };
}
