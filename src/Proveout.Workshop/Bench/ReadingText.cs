using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads what a person types at a check.</summary>
public static class ReadingText
{
    private static readonly string[] OverRangeWords = ["ol", "0l", "o.l", "0.l", "o.l.", "open", "over", "over range", "-", "--", "---", "----", "∞", "inf", "never"];
    private static readonly string[] GoodWords = ["1", "yes", "y", "good", "ok", "right", "as it should be", "as it should"];
    private static readonly string[] BadWords = ["0", "no", "n", "bad", "not", "wrong", "not ok", "not as it should be"];

    /// <summary>What can be typed at a check of resistance, in a sentence.</summary>
    public const string Help = "Type what the meter shows, such as 0.3, 4k7, 4,7 kΩ or 106; when it shows over range, type OL, open or -.";

    /// <summary>What can be typed at a check, in a sentence.</summary>
    /// <param name="unit">Unit of the check's readings; empty for one that is answered by yes or no.</param>
    public static string HelpFor(string unit) => unit switch
    {
        "Ω" => Help,
        "V" => "Type the volts that the meter shows, such as 0.58, 24,1 or 580 mV, with a minus sign where it shows one; when it shows over range, type OL.",
        "A" => "Type the amperes that the meter shows, such as 1.2 or 350 mA, with a minus sign where it shows one.",
        "s" => "Type the seconds, such as 12.5, or never when it does not come.",
        "" => "Type yes when it is as it should be, no when it is not.",
        _ => $"Type the number that it shows in {unit}, such as 12.5.",
    };

    /// <summary>Reads a resistance in ohms, or over range; null when the text is neither.</summary>
    public static double? TryRead(string text) => TryRead(text, "Ω");

    /// <summary>Reads a value in a unit, or over range; null when the text is neither.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="unit">Unit of the check's readings; empty for one that is answered by yes (1) or no (0).</param>
    public static double? TryRead(string text, string unit)
    {
        var plain = text.Trim();
        if (unit.Length == 0)
            return GoodWords.Contains(plain, StringComparer.OrdinalIgnoreCase) ? 1
                : BadWords.Contains(plain, StringComparer.OrdinalIgnoreCase) ? 0
                : null;
        if (OverRangeWords.Contains(plain, StringComparer.OrdinalIgnoreCase))
            return ReadingInterval.OverRange;
        if (unit == "Ω")
            return QuantityText.TryParseResistance(plain, out var resistance) && resistance.Ohms >= 0 ? resistance.Ohms : null;
        return plain is ['-' or '−', .. var magnitude] ? -Magnitude(magnitude, unit) : Magnitude(plain, unit);
    }

    private static double? Magnitude(string text, string unit) => unit switch
    {
        "V" when QuantityText.TryParseVoltage(WithUnit(text, unit), out var voltage) => voltage.Volts,
        "A" when QuantityText.TryParseCurrent(WithUnit(text, unit), out var current) => current.Amperes,
        "V" or "A" => null,
        _ => PlainNumber(text.EndsWith(unit, StringComparison.Ordinal) ? text[..^unit.Length] : text),
    };

    private static string WithUnit(string text, string unit) => text is [.., >= '0' and <= '9'] ? $"{text} {unit}" : text;

    private static double? PlainNumber(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;
}
