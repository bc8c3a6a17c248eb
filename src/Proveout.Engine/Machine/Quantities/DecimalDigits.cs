using System.Globalization;

namespace Proveout.Engine.Machine;

/// <summary>
/// The shortest decimal digits that stand for a double, so that a change of unit is a shift of the point and loses nothing.
/// </summary>
/// <param name="Negative">True below zero.</param>
/// <param name="Digits">Decimal digits without leading or trailing zeros; <c>0</c> for zero.</param>
/// <param name="Exponent">Power of ten that the digits, taken as a whole number, are multiplied by.</param>
internal readonly record struct DecimalDigits(bool Negative, string Digits, int Exponent)
{
    // Beyond this many zeros a number is written with a power of ten.
    private const int LongestRunOfZeros = 12;

    /// <summary>Power of ten of the first digit.</summary>
    public int Magnitude => Exponent + Digits.Length - 1;

    /// <summary>The digits of a finite number.</summary>
    public static DecimalDigits Of(double value)
    {
        var shortest = Math.Abs(value).ToString("R", CultureInfo.InvariantCulture);
        var mark = shortest.IndexOf('E', StringComparison.Ordinal);
        var mantissa = mark < 0 ? shortest : shortest[..mark];
        var power = mark < 0 ? 0 : int.Parse(shortest.AsSpan(mark + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var point = mantissa.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : mantissa.Length - point - 1;
        return Trimmed(value < 0, mantissa.Replace(".", "", StringComparison.Ordinal), power - decimals);
    }

    /// <summary>The same number with its point moved: divided by ten to the power given.</summary>
    public DecimalDigits Shift(int power) => Digits == "0" ? this : this with { Exponent = Exponent - power };

    /// <summary>The number with at most so many digits.</summary>
    public DecimalDigits Round(int digits, Rounding rounding)
    {
        if (Digits.Length <= digits)
            return this;
        var kept = long.Parse(Digits.AsSpan(0, digits), NumberStyles.None, CultureInfo.InvariantCulture);
        var up = rounding == Rounding.Up || (rounding == Rounding.Nearest && Digits[digits] >= '5');
        var text = (kept + (up ? 1 : 0)).ToString(CultureInfo.InvariantCulture);
        return Trimmed(Negative, text, Exponent + Digits.Length - digits);
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var sign = Negative ? "-" : "";
        if (Exponent > LongestRunOfZeros || Magnitude < -LongestRunOfZeros)
            return string.Create(CultureInfo.InvariantCulture, $"{sign}{Digits}e{Exponent:+0;-0}");
        if (Exponent >= 0)
            return sign + Digits + new string('0', Exponent);
        var padded = Digits.PadLeft(1 - Exponent, '0');
        return $"{sign}{padded[..^-Exponent]}.{padded[^-Exponent..]}";
    }

    private static DecimalDigits Trimmed(bool negative, string digits, int exponent)
    {
        var text = digits.TrimEnd('0');
        var significant = text.TrimStart('0');
        return significant.Length == 0 ? new(false, "0", 0) : new(negative, significant, exponent + digits.Length - text.Length);
    }
}
