namespace Proveout.Engine.Numerics;

/// <summary>A number held as the unevaluated sum of two doubles: about 31 significant decimal digits.</summary>
/// <remarks>
/// Networks of joints (milliohms) and insulation (tens of megohms) span twelve decades, and opening a joint subtracts nearly equal
/// numbers; sixteen digits do not carry that, thirty-one do. Algorithms: Dekker, Numerische Mathematik 18 (1971) 224-242; Knuth, The Art
/// of Computer Programming vol. 2, 4.2.2; with a fused multiply-add for the exact product.
/// </remarks>
internal readonly struct DoubleDouble(double high, double low)
{
    public static readonly DoubleDouble Zero = new(0, 0);

    public readonly double High = high;
    public readonly double Low = low;

    public static implicit operator DoubleDouble(double value) => new(value, 0);

    public static explicit operator double(DoubleDouble value) => value.High + value.Low;

    public static DoubleDouble operator -(DoubleDouble value) => new(-value.High, -value.Low);

    public static DoubleDouble operator +(DoubleDouble left, DoubleDouble right)
    {
        var (sum, error) = TwoSum(left.High, right.High);
        var (tail, tailError) = TwoSum(left.Low, right.Low);
        var (high, low) = QuickTwoSum(sum, error + tail);
        return Normalised(high, low + tailError);
    }

    public static DoubleDouble operator -(DoubleDouble left, DoubleDouble right) => left + -right;

    public static DoubleDouble operator *(DoubleDouble left, DoubleDouble right)
    {
        var product = left.High * right.High;
        var error = Math.FusedMultiplyAdd(left.High, right.High, -product);
        return Normalised(product, error + ((left.High * right.Low) + (left.Low * right.High)));
    }

    public static DoubleDouble operator /(DoubleDouble left, DoubleDouble right)
    {
        var first = left.High / right.High;
        var rest = left - (right * first);
        var second = rest.High / right.High;
        rest -= right * second;
        var third = rest.High / right.High;
        var (high, low) = QuickTwoSum(first, second);
        return Normalised(high, low + third);
    }

    /// <summary>The difference of two numbers, rounded to double: exact in its first sixteen digits also where the two are nearly equal.</summary>
    public static double Difference(DoubleDouble left, DoubleDouble right)
    {
        var (high, error) = TwoSum(left.High, -right.High);
        return high + (error + (left.Low - right.Low));
    }

    public override string ToString() => ((double)this).ToString("R", System.Globalization.CultureInfo.InvariantCulture);

    private static DoubleDouble Normalised(double high, double low)
    {
        var sum = high + low;
        return new DoubleDouble(sum, low - (sum - high));
    }

    private static (double Sum, double Error) TwoSum(double left, double right)
    {
        var sum = left + right;
        var shadow = sum - left;
        return (sum, (left - (sum - shadow)) + (right - shadow));
    }

    private static (double Sum, double Error) QuickTwoSum(double larger, double smaller)
    {
        var sum = larger + smaller;
        return (sum, smaller - (sum - larger));
    }
}
