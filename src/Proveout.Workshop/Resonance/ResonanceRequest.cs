namespace Proveout.Workshop;

/// <summary>What a person brings to learn about resonance.</summary>
/// <param name="Recordings">One recording, or one of each axis driven alone, x before y.</param>
/// <param name="After">The same after a change, in the same order; empty without.</param>
/// <param name="Chosen">What was chosen, by the names of <see cref="ResonanceRequest"/>'s constants; what is missing is the first of its list.</param>
/// <param name="Typed">Figures by the names of <see cref="ResonanceFields"/>.</param>
public sealed record ResonanceRequest(
    IReadOnlyList<ShakeFile> Recordings, IReadOnlyList<ShakeFile> After, IReadOnlyDictionary<string, string> Chosen, IReadOnlyDictionary<string, string> Typed)
{
    /// <summary>Name of the choice how the machine was made to vibrate.</summary>
    public const string ExcitedBy = "excited-by";

    /// <summary>Name of the choice what a sweep keeps.</summary>
    public const string SweepKeeps = "sweep-keeps";

    /// <summary>Name of the choice how a sweep rises.</summary>
    public const string SweepRises = "sweep-rises";

    /// <summary>Name of the choice of the unit of time.</summary>
    public const string TimeUnit = "time-unit";

    /// <summary>Name of the choice of the unit of acceleration.</summary>
    public const string AccelerationUnit = "acceleration-unit";

    /// <summary>Every choice with its list.</summary>
    public static IReadOnlyList<(string Name, string Label, IReadOnlyList<(string Name, string Words)> List)> Choices { get; } =
    [
        (ExcitedBy, "The machine was made to vibrate by", ResonanceChoices.ExcitedBy),
        (SweepKeeps, "A sweep kept", ResonanceChoices.SweepKeeps),
        (SweepRises, "A sweep rose", ResonanceChoices.SweepRises),
        (TimeUnit, "The time is in", ResonanceChoices.TimeUnits),
        (AccelerationUnit, "The accelerations are in", ResonanceChoices.AccelerationUnits),
    ];
}

/// <summary>A table of accelerations, opened when it is read.</summary>
/// <param name="Name">Its name as the user gave it.</param>
/// <param name="Open">Opens it at its beginning; the reader closes it.</param>
public sealed record ShakeFile(string Name, Func<Stream> Open);
