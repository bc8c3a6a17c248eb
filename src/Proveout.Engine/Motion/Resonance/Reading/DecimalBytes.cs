using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>Reads a decimal number from bytes. Most have few digits and are exact as a whole number over a power of ten (W. D. Clinger, How to read floating point numbers accurately, PLDI 1990); the others go the long way.</summary>
internal static class DecimalBytes
{
    // Up to here a whole number is exact in a double, and up to 10^22 a power of ten is.
    private const ulong MostExact = 1UL << 53;
    private const int MostPower = 22;
    private const int MostDigits = 18;

    private static readonly double[] Powers = [.. Enumerable.Range(0, MostPower + 1).Select(power => double.Parse($"1e{power}", CultureInfo.InvariantCulture))];

    /// <summary>Reads the whole of a cell; false when it is no finite number.</summary>
    /// <param name="cell">The cell without blanks around it.</param>
    /// <param name="value">The number.</param>
    /// <param name="power">The power of ten of its last digit: -3 for 0.125 or 1.25e-1.</param>
    /// <param name="mark">The decimal mark that stood in it; 0 when none did.</param>
    public static bool TryRead(ReadOnlySpan<byte> cell, out double value, out int power, out byte mark)
    {
        (value, power, mark) = (0, 0, 0);
        var at = 0;
        var isNegative = cell.Length > 0 && cell[0] == '-';
        if (cell.Length > 0 && cell[0] is (byte)'-' or (byte)'+')
            at++;
        var (whole, digits) = (0UL, 0);
        for (; at < cell.Length; at++)
        {
            var digit = (uint)(cell[at] - '0');
            if (digit <= 9)
            {
                // More digits than fit are counted only: the long way reads them.
                whole = digits < MostDigits ? (whole * 10) + digit : whole;
                digits += whole == 0 ? 0 : 1;
                power -= mark == 0 ? 0 : 1;
            }
            else if (cell[at] is (byte)'.' or (byte)',' && mark == 0)
            {
                mark = cell[at];
            }
            else
            {
                break;
            }
        }

        if (!HasDigit(cell[..at]))
            return false;
        if (at < cell.Length && !TryExponent(cell[at..], ref power))
            return false;
        if (digits > MostDigits || whole > MostExact || Math.Abs(power) > MostPower)
            return TryLong(cell, mark, out value);
        value = power < 0 ? whole / Powers[-power] : whole * Powers[power];
        value = isNegative ? -value : value;
        return true;
    }

    private static bool HasDigit(ReadOnlySpan<byte> text) => text.Length > 0 && (text[^1] is >= (byte)'0' and <= (byte)'9' || (text.Length > 1 && text[^2] is >= (byte)'0' and <= (byte)'9'));

    private static bool TryExponent(ReadOnlySpan<byte> text, ref int power)
    {
        if (text.Length < 2 || text[0] is not ((byte)'e' or (byte)'E'))
            return false;
        var at = text[1] is (byte)'-' or (byte)'+' ? 2 : 1;
        var exponent = 0;
        if (at == text.Length || text.Length - at > 4)
            return false;
        for (; at < text.Length; at++)
        {
            if (text[at] is < (byte)'0' or > (byte)'9')
                return false;
            exponent = (exponent * 10) + text[at] - '0';
        }

        power += text[1] == '-' ? -exponent : exponent;
        return true;
    }

    private static bool TryLong(ReadOnlySpan<byte> cell, byte mark, out double value)
    {
        Span<byte> plain = stackalloc byte[Math.Min(cell.Length, 400)];
        if (cell.Length > plain.Length)
        {
            value = 0;
            return false;
        }

        cell.CopyTo(plain);
        if (mark == ',')
            plain[plain.IndexOf(mark)] = (byte)'.';
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }
}
