namespace Proveout.Cli;

/// <summary>Text from files and people as it may go to a screen: nothing in it moves the cursor, changes colours, or turns the writing direction.</summary>
internal static class ShownText
{
    /// <summary>The text with U+FFFD for control characters other than line breaks and tabs (Unicode category Cc) and for marks that turn the direction (UAX #9).</summary>
    public static string Of(string text) =>
        text.Any(IsHarmful) ? string.Concat(text.Select(letter => IsHarmful(letter) ? '\uFFFD' : letter)) : text;

    private static bool IsHarmful(char letter) =>
        (char.IsControl(letter) && letter is not ('\n' or '\r' or '\t')) || letter is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
