using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What one limit of a true value says of whether the meter shows something that the sound machine does not.</summary>
/// <remarks>
/// What a meter may show holds the true value, and widens with both limits. It does so a little at the far end too: what shows at least may lie lower where the range above may hold the value as
/// well. There the other limit decides.
/// </remarks>
internal static class OneLimit
{
    /// <summary>Whether it surely shows more: true or false whatever the upper limit is, null where that decides.</summary>
    /// <param name="mode">The meter.</param>
    /// <param name="expected">What it may show of the sound machine.</param>
    /// <param name="low">The lower limit of the true value, in the meter's unit.</param>
    public static bool? ShowsMore(MeterMode mode, ReadingInterval expected, double low)
    {
        if (low <= expected.High || mode.Shown(low, low).Low <= expected.High)
            return false;
        return mode.Shown(low, double.PositiveInfinity).Low > expected.High ? true : null;
    }

    /// <summary>Whether it surely shows less: true or false whatever the lower limit is, null where that decides.</summary>
    /// <param name="mode">The meter.</param>
    /// <param name="expected">What it may show of the sound machine.</param>
    /// <param name="high">The upper limit of the true value, in the meter's unit.</param>
    public static bool? ShowsLess(MeterMode mode, ReadingInterval expected, double high)
    {
        if (high >= expected.Low || mode.Shown(high, high).High >= expected.Low)
            return false;
        return mode.Shown(0, high).High < expected.Low ? true : null;
    }
}
