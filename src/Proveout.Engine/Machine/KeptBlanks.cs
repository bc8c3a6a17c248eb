using System.Text.RegularExpressions;

namespace Proveout.Engine.Machine;

/// <summary>Blanks at which no line may break, so that a figure and its unit are read together.</summary>
public static partial class KeptBlanks
{
    /// <summary>No-break space, U+00A0.</summary>
    public const char Blank = '\u00A0';

    /// <summary>A text with such a blank between each figure and its unit.</summary>
    public static string BeforeUnits(string text) => BeforeUnit().Replace(text, "\u00A0");

    // Units of the SI (ISO 80000-1) with their prefixes, and those that are used beside them.
    [GeneratedRegex(@"(?<=\d) (?=(?:[GMkdcmµn]?(?:Ω|V|A|W|Hz|N|Nm|g|m|s|F|H|J|K|Pa|VA)|°C|°|%|min|h|d|dB)(?:[²³]|[/·][\p{L}²³]+)*(?![\p{L}\d]))")]
    private static partial Regex BeforeUnit();
}
