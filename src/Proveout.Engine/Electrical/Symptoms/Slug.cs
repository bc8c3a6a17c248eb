namespace Proveout.Engine.Electrical;

/// <summary>Identifiers from words.</summary>
internal static class Slug
{
    /// <summary>Lower case, hyphens between words; plus and minus keep their difference.</summary>
    public static string Of(string words)
    {
        var plain = words.ToLowerInvariant().Replace("+", "plus", StringComparison.Ordinal);
        var letters = plain.Select((letter, at) => letter == '-' && (at + 1 == plain.Length || plain[at + 1] == '-')
            ? "minus"
            : char.IsAsciiLetterOrDigit(letter) || letter == '.' ? letter.ToString() : "-");
        return string.Join('-', string.Concat(letters).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }
}
