namespace Proveout.Workshop;

/// <summary>Makes a reading of what a person said, in English: <c>four point seven kilo ohm</c>, <c>one oh six</c>, <c>open</c>.</summary>
/// <remarks>What could mean two numbers, such as <c>twenty thirty</c>, is none: a wrong reading taken for a right one is worse than being asked again.</remarks>
public static class SpokenReading
{
    private static readonly string[] OverRange = ["open", "over range", "overrange", "over load", "overload", "o l", "ol", "o. l.", "infinite", "infinity", "open circuit"];
    private static readonly string[] Fillers = ["it", "reads", "is", "about", "the", "meter", "shows"];
    private static readonly string[] Points = ["point", "dot", "comma"];

    private static readonly Dictionary<string, string> Prefixes = new(StringComparer.Ordinal)
    {
        ["kilo"] = "k",
        ["k"] = "k",
        ["mega"] = "M",
        ["meg"] = "M",
        ["milli"] = "m",
    };

    private static readonly Dictionary<string, (string Prefix, string Unit)> Units = new(StringComparer.Ordinal)
    {
        ["ohm"] = ("", "Ω"),
        ["ohms"] = ("", "Ω"),
        ["ω"] = ("", "Ω"),
        ["kω"] = ("k", "Ω"),
        ["kilohm"] = ("k", "Ω"),
        ["kilohms"] = ("k", "Ω"),
        ["kiloohm"] = ("k", "Ω"),
        ["kiloohms"] = ("k", "Ω"),
        ["megohm"] = ("M", "Ω"),
        ["megohms"] = ("M", "Ω"),
        ["megaohm"] = ("M", "Ω"),
        ["megaohms"] = ("M", "Ω"),
        ["milliohm"] = ("m", "Ω"),
        ["milliohms"] = ("m", "Ω"),
        ["volt"] = ("", "V"),
        ["volts"] = ("", "V"),
        ["v"] = ("", "V"),
        ["millivolt"] = ("m", "V"),
        ["millivolts"] = ("m", "V"),
        ["ampere"] = ("", "A"),
        ["amperes"] = ("", "A"),
        ["amp"] = ("", "A"),
        ["amps"] = ("", "A"),
        ["a"] = ("", "A"),
        ["milliampere"] = ("m", "A"),
        ["milliamperes"] = ("m", "A"),
        ["milliamp"] = ("m", "A"),
        ["milliamps"] = ("m", "A"),
    };

    /// <summary>The reading as it would be typed, such as <c>4.7 kΩ</c>; null when what was heard is none, or is in another unit.</summary>
    /// <param name="heard">What was heard.</param>
    /// <param name="unit">Unit of the check's readings.</param>
    public static string? TryRead(string heard, string unit)
    {
        var plain = heard.Trim().TrimEnd('.', '!', '?').ToLowerInvariant().Replace('-', ' ').Replace('−', ' ');
        if (unit.Length == 0)
            return null;
        if (OverRange.Contains(plain))
            return "OL";
        var isNegative = heard.TrimStart() is ['-' or '−', ..];
        List<string> words = [.. plain.Split(' ', StringSplitOptions.RemoveEmptyEntries).SkipWhile(Fillers.Contains)];
        if (words is ["minus" or "negative", ..])
        {
            isNegative = true;
            words.RemoveAt(0);
        }

        if (TakeUnit(words, unit) is not { } prefix || NumberOf(words) is not { } number)
            return null;
        var text = $"{(isNegative ? "-" : "")}{number}{(prefix.Length > 0 ? $" {prefix}{unit}" : "")}";
        return ReadingText.TryRead(text, unit) is null ? null : text;
    }

    // Takes the unit and its prefix from the end; null when the unit is another than the check's.
    private static string? TakeUnit(List<string> words, string unit)
    {
        var prefix = "";
        if (words.Count > 0 && Units.TryGetValue(words[^1], out var said))
        {
            if (said.Unit != unit)
                return null;
            prefix = said.Prefix;
            words.RemoveAt(words.Count - 1);
        }

        if (words.Count == 0 || !Prefixes.TryGetValue(words[^1], out var apart))
            return prefix;
        words.RemoveAt(words.Count - 1);
        return prefix.Length == 0 ? apart : null;
    }

    private static string? NumberOf(List<string> words)
    {
        var place = words.FindIndex(Points.Contains);
        if (place < 0)
            return SpokenNumber.Whole(words);
        var fraction = SpokenNumber.Digits(words[(place + 1)..]);
        var whole = place == 0 ? "0" : SpokenNumber.Whole(words[..place]);
        return fraction is null || whole is null || whole.Contains('.', StringComparison.Ordinal) ? null : $"{whole}.{fraction}";
    }
}
