namespace Proveout.Engine.Tests.Electrical;

/// <summary>The worst deviation among many pairs of readings.</summary>
internal sealed class Deviation
{
    private int _count;
    private int _overRange;
    private (double Expected, double Actual, string Check, string Fault) _worst;

    /// <summary>The worst relative deviation; infinite when one of a pair is over range and the other not.</summary>
    public double Relative { get; private set; }

    public void Compare((double LowOhms, double HighOhms) expected, (double LowOhms, double HighOhms) actual, string check, string fault)
    {
        Compare(expected.LowOhms, actual.LowOhms, check, fault);
        Compare(expected.HighOhms, actual.HighOhms, check, fault);
    }

    public override string ToString() =>
        FormattableString.Invariant($"{_count} readings, {_overRange} of them over range, worst relative deviation {Relative:E2} ({_worst.Expected:R} expected, {_worst.Actual:R} found at {_worst.Check} under {_worst.Fault})");

    private void Compare(double expected, double actual, string check, string fault)
    {
        _count++;
        if (expected.Equals(actual))
        {
            _overRange += double.IsPositiveInfinity(expected) ? 1 : 0;
            return;
        }

        var deviation = double.IsFinite(expected) && double.IsFinite(actual) ? Math.Abs(actual - expected) / expected : double.PositiveInfinity;
        if (deviation > Relative)
            (Relative, _worst) = (deviation, (expected, actual, check, fault));
    }
}
