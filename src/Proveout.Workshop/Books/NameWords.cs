using System.Text.RegularExpressions;

namespace Proveout.Workshop;

/// <summary>The words of a text, as names are looked for among them.</summary>
internal static partial class NameWords
{
    /// <summary>Words of two letters and more, in lower case.</summary>
    public static IEnumerable<string> Of(string text) => Words().Matches(text).Select(match => match.Value.ToLowerInvariant());

    /// <summary>True when a text holds another as a whole: no letter or digit stands right before or behind it.</summary>
    public static bool Holds(string text, string sought, StringComparison comparison)
    {
        for (var at = text.IndexOf(sought, comparison); at >= 0; at = text.IndexOf(sought, at + 1, comparison))
            if (!(at > 0 && char.IsLetterOrDigit(text[at - 1])) && !(at + sought.Length < text.Length && char.IsLetterOrDigit(text[at + sought.Length])))
                return true;
        return false;
    }

    /// <summary>True when a text says a time of day, or a number as long as those of telephones are.</summary>
    public static bool SaysTimeOrNumber(string text) => TimeOfDay().IsMatch(text) || LongNumber().IsMatch(text);

    [GeneratedRegex(@"\p{L}[\p{L}\p{Mn}]+")]
    private static partial Regex Words();

    [GeneratedRegex(@"\b[0-2]?\d[:.h][0-5]\d\b(?!\s*(?:mm|V|A|W|Ω|k|M|°|N|m|%))|\b\d{1,2}\s*(?:am|pm|o'clock)\b", RegexOptions.IgnoreCase)]
    private static partial Regex TimeOfDay();

    [GeneratedRegex(@"\d(?:[ /-]?\d){6,}")]
    private static partial Regex LongNumber();
}
