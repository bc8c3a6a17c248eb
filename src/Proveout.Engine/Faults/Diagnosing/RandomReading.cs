namespace Proveout.Engine.Faults;

/// <summary>Readings drawn from the interval that they must lie in.</summary>
internal static class RandomReading
{
    /// <summary>The middle of an interval on the scale of readings; over range where that may be shown.</summary>
    public static double Middle(ReadingInterval interval) => At(interval, 0.5);

    /// <summary>A reading whose deviation is the sum of two even ones, as from a part and a meter.</summary>
    public static double Draw(ReadingInterval interval, Random random) =>
        double.IsPositiveInfinity(interval.High) && !interval.IsOverRangeOnly && random.Next(2) == 0
            ? At(new(interval.Low, double.MaxValue), random.NextDouble())
            : At(interval, (random.NextDouble() + random.NextDouble()) / 2);

    private static double At(ReadingInterval interval, double share)
    {
        if (double.IsPositiveInfinity(interval.High))
            return interval.High;
        var low = ReadingScale.Of(interval.Low);
        return Math.Clamp(ReadingScale.ValueAt(low + (share * (ReadingScale.Of(interval.High) - low))), interval.Low, interval.High);
    }
}
