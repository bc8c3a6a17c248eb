namespace Proveout.Engine.Motion;

/// <summary>Units of time and acceleration that headings may carry.</summary>
internal static class SignalUnits
{
    /// <summary>Standard gravity, in m/s² (ISO 80000-3:2019; exact by convention).</summary>
    public const double Gravity = 9.80665;

    /// <summary>What may be written, for a sentence.</summary>
    public const string AccelerationSpellings = "m/s², g or mg";

    /// <summary>What may be written, for a sentence.</summary>
    public const string TimeSpellings = "s, ms or us";

    /// <summary>One of the unit in m/s²; null when it is no unit of acceleration.</summary>
    public static double? Acceleration(string spelling) => Plain(spelling) switch
    {
        "m/s2" or "m/s/s" or "ms-2" or "m/s\uFFFD" or "mps2" => 1,
        "g" or "gn" or "g0" => Gravity,
        "mg" => Gravity / 1000,
        "mm/s2" or "mm/s\uFFFD" => 1e-3,
        _ => null,
    };

    /// <summary>One of the unit in s; null when it is no unit of time.</summary>
    public static double? Time(string spelling) => Plain(spelling) switch
    {
        "s" or "sec" or "second" or "seconds" => 1,
        "ms" or "millisecond" or "milliseconds" => 1e-3,
        "us" or "µs" or "μs" or "\uFFFDs" or "microsecond" or "microseconds" => 1e-6,
        "ns" or "nanosecond" or "nanoseconds" => 1e-9,
        "min" => 60,
        _ => null,
    };

    private static string Plain(string spelling) =>
        string.Concat(spelling.ToLowerInvariant().Where(letter => letter is not (' ' or '^' or '*' or '·' or '⋅'))).Replace('²', '2').Replace('−', '-').Replace("⁻2", "-2", StringComparison.Ordinal);
}
