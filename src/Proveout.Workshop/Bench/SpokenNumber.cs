using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Numbers in English words, as people read them off a display: as a number, or digit by digit.</summary>
internal static class SpokenNumber
{
    private static readonly string[] Small =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    /// <summary>Digits said one by one, such as <c>oh six</c>; null when something else was said.</summary>
    public static string? Digits(IReadOnlyList<string> words) =>
        words.Count > 0 && words.All(word => DigitsOf(word) is not null) ? string.Concat(words.Select(DigitsOf)) : null;

    /// <summary>A whole number, or one that came as figures; null when it is neither, or could be two numbers.</summary>
    public static string? Whole(IReadOnlyList<string> words) =>
        words is [var only] && IsFigures(only) ? only.Replace(',', '.')
        : words.Count > 0 && words.All(word => DigitOf(word) is not null) ? Digits(words)
        : Counted(words)?.ToString(CultureInfo.InvariantCulture);

    private static bool IsFigures(string word) =>
        word.Length is > 0 and <= 12 && word.All(sign => sign is (>= '0' and <= '9') or '.' or ',') && word.Count(sign => sign is '.' or ',') <= 1 && char.IsAsciiDigit(word[^1]) && char.IsAsciiDigit(word[0]);

    private static string? DigitsOf(string word) => DigitOf(word) ?? (word.Length <= 12 && word.All(char.IsAsciiDigit) ? word : null);

    private static string? DigitOf(string word) => word is "oh" or "o" or "nought" ? "0"
        : Array.IndexOf(Small, word, 0, 10) is >= 0 and var digit ? $"{digit}"
        : word is [>= '0' and <= '9'] ? word
        : null;

    // Thousands, hundreds, tens and ones, each at most once and in this order.
    private static int? Counted(IReadOnlyList<string> words)
    {
        var list = words.Where(word => word != "and").ToList();
        var thousand = list.IndexOf("thousand");
        if (thousand < 0)
            return BelowThousand(list);
        var rest = list[(thousand + 1)..];
        return BelowThousand(list[..thousand]) is > 0 and var thousands && (rest.Count == 0 ? 0 : BelowThousand(rest)) is { } ones
            ? (thousands * 1000) + ones
            : null;
    }

    private static int? BelowThousand(List<string> words)
    {
        if (words is [var figures] && figures.Length <= 3 && int.TryParse(figures, NumberStyles.None, CultureInfo.InvariantCulture, out var whole))
            return whole;
        if (words is not [var first, "hundred", ..])
            return BelowHundred(words);
        var rest = words[2..];
        return Array.IndexOf(Small, first) is > 0 and < 10 and var hundreds && (rest.Count == 0 ? 0 : BelowHundred(rest)) is { } below
            ? (hundreds * 100) + below
            : null;
    }

    private static int? BelowHundred(List<string> words) => words switch
    {
        [var one] when Array.IndexOf(Small, one) is >= 0 and var small => small,
        [var ten] when Array.IndexOf(Tens, ten) is >= 0 and var tens => (tens + 2) * 10,
        [var ten, var one] when Array.IndexOf(Tens, ten) is >= 0 and var tens && Array.IndexOf(Small, one) is > 0 and < 10 and var ones => ((tens + 2) * 10) + ones,
        _ => null,
    };
}
