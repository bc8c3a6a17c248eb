namespace Proveout.Workshop;

/// <summary>The figures that tension by sound asks for; none of them is always needed.</summary>
public static class SoundingFields
{
    /// <summary>A note that was read elsewhere.</summary>
    public static FigureField Frequency { get; } = new("frequency", "Note of the span, or of the left belt", "Hz", 5, 2000, "Leave it empty when you give a recording.");

    /// <summary>The note of the other belt of a pair.</summary>
    public static FigureField OtherFrequency { get; } = new("other-frequency", "Note of the right belt", "Hz", 5, 2000, "For a pair; leave it empty when you give a recording of the right belt.");

    /// <summary>How well typed notes are known.</summary>
    public static FigureField FrequencyError { get; } = new("frequency-error", "Typed notes may be off by", "Hz", 0, 100, "Half the last digit shown, or the spread of repeated plucks.", "0.5");

    /// <summary>Free length.</summary>
    public static FigureField Span { get; } = new("span", "Free length of the span", "mm", 20, 3000, "From where the belt leaves one pulley to where it meets the next.");

    /// <summary>Free length of the other belt.</summary>
    public static FigureField OtherSpan { get; } = new("other-span", "Free length of the right belt", "mm", 20, 3000, "When it differs from the left one.");

    /// <summary>How well the lengths are known.</summary>
    public static FigureField SpanError { get; } = new("span-error", "Lengths may be off by", "mm", 0, 100, "What your rule and the place where the belt leaves the pulley leave open.", "1");

    /// <summary>Mass per length.</summary>
    public static FigureField Mass { get; } = new("mass", "Belt mass by length", "g/m", 0.5, 1000, "Weigh a metre of it.");

    /// <summary>How well the mass is known.</summary>
    public static FigureField MassError { get; } = new("mass-error", "Mass may be off by", "g/m", 0, 500, "3 % of the mass when left empty.");

    /// <summary>Width, when nobody can weigh.</summary>
    public static FigureField Width { get; } = new("width", "Belt width", "mm", 2, 100, "Only for belts of 2 mm pitch that you cannot weigh: the force is then uncertain by a fifth.");

    /// <summary>Bending stiffness.</summary>
    public static FigureField Bending { get; } = new("bending", "Bending stiffness E I", "mN·m²", 0, 1000, "When the belt's maker states it; otherwise it is read from the sound's partials.");

    /// <summary>Target force.</summary>
    public static FigureField Target { get; } = new("target", "Force that the span should have", "N", 0.1, 5000, "Often 8 to 20 N for belts 6 mm wide, 12 to 30 N for 9 mm (common practice); what the motor's bearing bears comes first.");

    /// <summary>Limit of a pair.</summary>
    public static FigureField Limit { get; } = new("limit", "A pair counts as equal within", "%", 0.1, 50, "Of the force: 6 to 10 % is usual (common practice).", "8");

    /// <summary>Axial stiffness.</summary>
    public static FigureField BeltStiffness { get; } = new("belt-stiffness", "Belt stiffness E A", "N", 100, 10_000_000, "Force for each unit of strain: the force that lengthens a belt by 1 %, times 100.");

    /// <summary>Length that shares the stretch.</summary>
    public static FigureField BeltLength { get; } = new("belt-length", "Length of belt that the screw stretches", "mm", 50, 20_000, "All runs together, from anchor to anchor.");

    /// <summary>Runs that one millimetre of screw lengthens.</summary>
    public static FigureField Runs { get; } = new("runs", "Runs that the screw lengthens", "", 1, 2, "2 when it moves a pulley that the belt turns back around, 1 when it pulls an end.", "2", IsWhole: true);

    /// <summary>Pitch of the screw.</summary>
    public static FigureField ScrewPitch { get; } = new("screw-pitch", "Pitch of the screw", "mm", 0.1, 5, "0.5 mm for M3, 0.7 mm for M4, 0.8 mm for M5 (ISO 261).");

    /// <summary>A note before a trial turn.</summary>
    public static FigureField TrialFrequency { get; } = new("trial-frequency", "Note before a trial turn", "Hz", 5, 2000, "When you know no stiffness: pluck, turn a little, pluck again.");

    /// <summary>The trial turn.</summary>
    public static FigureField TrialTurns { get; } = new("trial-turns", "Turns of the trial", "", -20, 20, "Tighter is positive; 0.25 for a quarter turn.");

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } =
    [
        Frequency, OtherFrequency, FrequencyError, Span, OtherSpan, SpanError, Mass, MassError, Width, Bending, Target, Limit,
        BeltStiffness, BeltLength, Runs, ScrewPitch, TrialFrequency, TrialTurns,
    ];
}
