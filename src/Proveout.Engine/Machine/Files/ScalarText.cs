using System.Globalization;
using System.Text;

namespace Proveout.Engine.Machine;

/// <summary>Writes one piece of text in YAML, with quotes where another reader of YAML could take it for something else.</summary>
internal static class ScalarText
{
    private static readonly HashSet<string> Words =
        new(["true", "false", "null", "yes", "no", "on", "off", "y", "n"], StringComparer.OrdinalIgnoreCase);

    public static string Of(string text) => IsPlain(text) ? text : Quoted(text);

    private static bool IsPlain(string text) =>
        text.Length > 0 && char.IsLetterOrDigit(text[0]) && text[^1] != ' ' && text.All(IsPlain)
        && !Words.Contains(text) && !IsNumberLike(text);

    private static bool IsPlain(char sign) => char.IsLetterOrDigit(sign) || sign is ' ' or '.' or '_' or '+' or '-' or '/' or '%';

    // Numbers, dates and times in any of the forms that versions of YAML know; too many are quoted rather than too few.
    private static bool IsNumberLike(string text) =>
        char.IsDigit(text[0]) && text.All(sign => char.IsAsciiHexDigit(sign) || sign is '.' or '_' or '-' or '+' or 'o' or 'x');

    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"", text.Length + 2);
        foreach (var sign in text)
            quoted.Append(Escaped(sign));
        return quoted.Append('"').ToString();
    }

    private static string Escaped(char sign) => sign switch
    {
        '"' => "\\\"",
        '\\' => @"\\",
        '\n' => "\\n",
        '\t' => "\\t",
        // Line breaks of other kinds, and a byte-order mark, would be read as such.
        '\u2028' or '\u2029' or '\uFEFF' => Numbered(sign),
        _ when char.IsControl(sign) => Numbered(sign),
        _ => sign.ToString(),
    };

    private static string Numbered(char sign) => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)sign:X4}");
}
