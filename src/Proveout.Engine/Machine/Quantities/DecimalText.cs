using System.Globalization;

namespace Proveout.Engine.Machine;

/// <summary>Numbers as people write them: a decimal point or comma, a sign, a signed power of ten.</summary>
internal static class DecimalText
{
    /// <summary>Length of the number that text starts with; 0 when it does not start with one.</summary>
    /// <remarks>A power of ten must show its sign: <c>4e7</c> is too easily a slip for a value code.</remarks>
    public static int LengthAtStart(ReadOnlySpan<char> text)
    {
        var at = text is ['+' or '-', ..] ? 1 : 0;
        var whole = DigitsAt(text, at);
        at += whole;
        if (at < text.Length && text[at] is '.' or ',')
        {
            var fraction = DigitsAt(text, at + 1);
            if (fraction > 0)
                at += 1 + fraction;
            else if (whole == 0)
                return 0;
        }
        else if (whole == 0)
        {
            return 0;
        }

        return at + PowerAt(text[at..]);
    }

    /// <summary>A number in the form <see cref="LengthAtStart"/> finds, times a power of ten; correctly rounded in one step.</summary>
    public static double Parse(ReadOnlySpan<char> number, int power)
    {
        var mark = number.IndexOfAny('e', 'E');
        var mantissa = mark < 0 ? number : number[..mark];
        // A power written in the text may be of any length: beyond what a double holds it saturates.
        if (mark >= 0)
            power += int.TryParse(number[(mark + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var written)
                ? Math.Clamp(written, -9999, 9999)
                : 9999;
        var text = string.Create(CultureInfo.InvariantCulture, $"{mantissa.ToString().Replace(',', '.')}e{power}");
        return double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    private static int DigitsAt(ReadOnlySpan<char> text, int at)
    {
        var count = 0;
        while (at + count < text.Length && char.IsAsciiDigit(text[at + count]))
            count++;
        return count;
    }

    private static int PowerAt(ReadOnlySpan<char> text) =>
        text is ['e' or 'E', '+' or '-', ..] && DigitsAt(text, 2) is > 0 and var digits ? 2 + digits : 0;
}
