namespace Proveout.Workshop;

/// <summary>What is chosen from a list when a recording is read: names for options and forms, with the words for people.</summary>
public static class ResonanceChoices
{
    /// <summary>Blows at the moving part.</summary>
    public const string Blows = "blows";

    /// <summary>Noise or many small movements.</summary>
    public const string Noise = "noise";

    /// <summary>A sweep by the axis's own motor.</summary>
    public const string Sweep = "sweep";

    /// <summary>How the machine was made to vibrate; the first is taken when nothing is said.</summary>
    public static IReadOnlyList<(string Name, string Words)> ExcitedBy { get; } =
    [
        ("untold", "I do not know"), (Blows, "Blows or pushes at the moving part"), (Noise, "Noise, or many small shakes of the moving part"), (Sweep, "A sine of rising frequency by the axis's own motor"),
    ];

    /// <summary>What a sweep keeps while it rises.</summary>
    public static IReadOnlyList<(string Name, string Words)> SweepKeeps { get; } =
        [("acceleration", "The same acceleration"), ("speed", "The same highest speed"), ("travel", "The same travel")];

    /// <summary>How a sweep rises.</summary>
    public static IReadOnlyList<(string Name, string Words)> SweepRises { get; } =
        [("hertz", "By so many Hz a second"), ("octaves", "By so many octaves a second")];

    /// <summary>Units of the time where the heading names none.</summary>
    public static IReadOnlyList<(string Name, string Words)> TimeUnits { get; } = [("", "as the heading says"), ("s", "s"), ("ms", "ms"), ("us", "us")];

    /// <summary>Units of the accelerations where the headings name none.</summary>
    public static IReadOnlyList<(string Name, string Words)> AccelerationUnits { get; } = [("", "as the heading says"), ("m/s²", "m/s²"), ("g", "g"), ("mg", "mg")];
}
