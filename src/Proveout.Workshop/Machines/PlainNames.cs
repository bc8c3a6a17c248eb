namespace Proveout.Workshop;

/// <summary>Names that are the same on every system and in every address.</summary>
public static class PlainNames
{
    /// <summary>Letters and digits in lower case, hyphens between; empty when the words have neither.</summary>
    public static string Of(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return string.Join('-', new string([.. words.Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
