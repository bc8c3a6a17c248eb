using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads what a person types at a check.</summary>
public static class ReadingText
{
    private static readonly string[] OverRangeWords = ["ol", "0l", "o.l", "0.l", "o.l.", "open", "over", "over range", "-", "--", "---", "----", "∞", "inf"];

    /// <summary>What can be typed, in a sentence.</summary>
    public const string Help = "Type what the meter shows, such as 0.3, 4k7, 4,7 kΩ or 106; when it shows over range, type OL, open or -.";

    /// <summary>Reads a resistance in ohms, or over range; null when the text is neither.</summary>
    public static double? TryRead(string text)
    {
        var plain = text.Trim();
        if (OverRangeWords.Contains(plain, StringComparer.OrdinalIgnoreCase))
            return ReadingInterval.OverRange;
        return QuantityText.TryParseResistance(plain, out var resistance) && resistance.Ohms >= 0 ? resistance.Ohms : null;
    }
}
