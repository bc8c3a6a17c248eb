using System.Text;

namespace Proveout.Publish.Drawings;

/// <summary>Keeps words inside their place when the font that will draw them is not known.</summary>
internal static class TextFit
{
    private const double RoundingError = 0.01;

    /// <summary>A width that common sans-serif fonts do not exceed, in the unit of the size. Widths are those of DejaVu Sans, among the widest that systems show as their own.</summary>
    public static double Width(string text, double size, bool bold = false) =>
        PlainText.Characters(text).Sum(Ems) * size * (bold ? 1.14 : 1);

    /// <summary>The text, or its beginning and end with an ellipsis between them: names differ at their end more often than in their middle.</summary>
    public static string Fit(string text, double width, double size, bool bold = false)
    {
        var room = width + RoundingError;
        if (Width(text, size, bold) <= room)
            return text;
        var characters = PlainText.Characters(text);
        for (var kept = characters.Count - 1; kept > 0; kept--)
        {
            var candidate = Shorten(characters, kept);
            if (Width(candidate, size, bold) <= room)
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
        'i' or 'j' or 'l' or 'I' or 'J' or '.' or ',' or ':' or ';' or '\'' or '|' or '!' or ' ' => 0.35,
        'f' or 't' or 'r' or '-' or '(' or ')' or '/' => 0.43,
        'E' or 'F' or 'L' or 'P' or 'S' or 'T' or 'Y' or (>= '0' and <= '9') => 0.64,
        'A' or 'B' or 'C' or 'K' or 'R' or 'V' or 'X' or 'Z' => 0.7,
        'm' or 'w' or 'M' or 'W' or '%' or '@' or '…' => 1.0,
        '+' or '=' or '<' or '>' or '~' or '±' => 0.84,
        >= 'A' and <= 'Z' => 0.79,
        >= 0x1100 => 1.1,
        _ => 0.64,
    };
}
