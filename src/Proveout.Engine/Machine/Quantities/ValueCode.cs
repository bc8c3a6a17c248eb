namespace Proveout.Engine.Machine;

/// <summary>
/// Value codes of IEC 60062: a letter stands in the place of the decimal point and gives the multiplier, as in <c>4K7</c>.
/// </summary>
internal static class ValueCode
{
    /// <summary>
    /// Reads a code; the value is in ohms. A lower-case <c>k</c> is taken too, as most people write it; a lower-case <c>m</c> is not: it
    /// could mean milli.
    /// </summary>
    public static bool TryParse(ReadOnlySpan<char> text, out double ohms)
    {
        ohms = 0;
        var at = text.IndexOfAnyExceptInRange('0', '9');
        if (at < 0 || text.Length < 2 || PowerOf(text[at]) is not { } power || text[(at + 1)..].ContainsAnyExceptInRange('0', '9'))
            return false;
        ohms = DecimalText.Parse($"{text[..at]}.{text[(at + 1)..]}", power);
        return Measure.IsPlausible(ohms);
    }

    private static int? PowerOf(char letter) => letter switch
    {
        'R' or 'r' => 0,
        'K' or 'k' => 3,
        'M' => 6,
        'G' => 9,
        'T' => 12,
        _ => null,
    };
}
