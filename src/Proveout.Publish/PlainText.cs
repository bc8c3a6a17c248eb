using System.Globalization;
using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Publish;

/// <summary>Makes text that anyone may have typed fit to stand in XML, HTML and PDF.</summary>
internal static class PlainText
{
    /// <summary>
    /// The text without what could disturb its surroundings: characters that XML 1.0 (section 2.2) does not allow become U+FFFD,
    /// line breaks and tabs become spaces, and controls that turn the writing direction of what follows (Unicode UAX #9) go.
    /// </summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            if (!UnseenMarks.TurnsDirection(rune.Value))
                clean.Append(Replace(rune).ToString());
        return clean.ToString();
    }

    /// <summary>The characters as a reader sees them: a letter with its accents is one.</summary>
    public static IReadOnlyList<string> Characters(string text)
    {
        var characters = new List<string>();
        var each = StringInfo.GetTextElementEnumerator(text);
        while (each.MoveNext())
            characters.Add(each.GetTextElement());
        return characters;
    }

    private static Rune Replace(Rune rune) => rune.Value switch
    {
        '\n' or '\r' or '\t' => new Rune(' '),
        < 0x20 or (>= 0x7F and <= 0x9F) or 0xFFFE or 0xFFFF => Rune.ReplacementChar,
        _ => rune,
    };
}
