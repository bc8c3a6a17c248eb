using Proveout.Engine.Machine;

namespace Proveout.Cli;

/// <summary>Text from files and people as it may go to a screen: nothing in it moves the cursor, changes colours, or turns the writing direction.</summary>
internal static class ShownText
{
    /// <summary>The text with U+FFFD for control characters other than line breaks and tabs (Unicode category Cc) and for marks that turn the direction (UAX #9).</summary>
    public static string Of(string text) => UnseenMarks.Replaced(text, "\uFFFD");
}
