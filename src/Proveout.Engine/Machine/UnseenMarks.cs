namespace Proveout.Engine.Machine;

/// <summary>Characters that are not seen themselves and change how what follows is shown.</summary>
/// <remarks>
/// Controls (Unicode category Cc) steer a terminal. The explicit marks of writing direction (UAX #9: embeddings, overrides, isolates) let a text be read in
/// another order than it is written, so that a terminal "L" may look like another. Letters that are written from right to left need none of them.
/// </remarks>
public static class UnseenMarks
{
    /// <summary>True for a mark that turns the writing direction.</summary>
    public static bool TurnsDirection(int code) => code is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    /// <summary>True for a mark that turns the direction, and for a control that is no line break or tab.</summary>
    public static bool Is(char sign) => TurnsDirection(sign) || (char.IsControl(sign) && sign is not ('\n' or '\r' or '\t'));

    /// <summary>The first of them in a text; null when there is none.</summary>
    public static char? FirstIn(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var sign in text)
            if (Is(sign))
                return sign;
        return null;
    }

    /// <summary>The text with another sign in the place of each.</summary>
    public static string Replaced(string text, string by) => FirstIn(text) is null ? text : string.Concat(text.Select(sign => Is(sign) ? by : sign.ToString()));
}
