namespace Proveout.Workshop;

/// <summary>The figures that resonance asks for; each has a usual one.</summary>
public static class ResonanceFields
{
    /// <summary>Where resonances are sought from.</summary>
    public static FigureField Lowest { get; } = new("lowest", "Look for resonances from", "Hz", 2, 500, "Below 10 Hz it is mostly the movement itself.", "10");

    /// <summary>Up to where.</summary>
    public static FigureField Highest { get; } = new("highest", "Look for resonances up to", "Hz", 10, 1000, "Gantries ring mostly between 30 and 80 Hz (common practice).", "200");

    /// <summary>Resolution of the spectrum.</summary>
    public static FigureField Resolution { get; } = new("resolution", "Tell frequencies apart from", "Hz", 0.05, 2, "Finer needs a longer recording: 0.5 Hz needs 10 s at least, better 60 s.", "0.5");

    /// <summary>Vibration that may be left.</summary>
    public static FigureField Tolerance { get; } = new("tolerance", "Vibration that a shaper may leave", "%", 1, 25, "5 % is what the literature usually takes.", "5");

    /// <summary>Wandering.</summary>
    public static FigureField Wander { get; } = new("wander", "A resonance may wander by", "%", 0, 30, "Over the travel, with the load, from day to day: repeats agree within 3 to 5 % (common practice). 0 when you recorded at both ends and it stayed.", "5");

    /// <summary>Corner error.</summary>
    public static FigureField CornerError { get; } = new("corner-error", "A corner may be missed by", "mm", 0.005, 5, "How far from the corner the rounded path may pass.", "0.1");

    /// <summary>Speed kept at a corner.</summary>
    public static FigureField CornerSpeed { get; } = new("corner-speed", "Speed that each axis keeps at a corner", "mm/s", 0, 200, "What the controller does not slow below when it turns a corner; 0 when it stops.", "5");

    /// <summary>Speed along slanted lines.</summary>
    public static FigureField PathSpeed { get; } = new("path-speed", "Speed along the path", "mm/s", 1, 2000, "For what different shapers on the two axes do to slanted lines and circles.", "100");

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } = [Lowest, Highest, Resolution, Tolerance, Wander, CornerError, CornerSpeed, PathSpeed];
}
