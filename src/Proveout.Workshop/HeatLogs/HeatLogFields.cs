namespace Proveout.Workshop;

/// <summary>The figures that a log of a heater may need besides itself; leave out what it tells.</summary>
public static class HeatLogFields
{
    /// <summary>What the log calls full output.</summary>
    public static FigureField FullOutput { get; } = new("full-output", "Full output, as the log writes it", "", 0.001, 1e6, "1, 100, 255, or the heater's watts; only when the headings do not say it.");

    /// <summary>Temperature without any output.</summary>
    public static FigureField Room { get; } = new("room", "Temperature of the room", "°C", -10, 60, "Only when the log does not begin cold.");

    /// <summary>What the controller is to hold.</summary>
    public static FigureField Target { get; } = new("target", "Temperature to hold", "°C", 20, 450, "For settings and guard; the machine file's, or the highest that the log asks for, when left out.");

    /// <summary>Where to begin.</summary>
    public static FigureField From { get; } = new("from", "Leave out what comes before", "s", 0, 1e9, "Counted from the first row.");

    /// <summary>Where to end.</summary>
    public static FigureField To { get; } = new("to", "Leave out what comes after", "s", 0, 1e9, "Counted from the first row.");

    /// <summary>Which run.</summary>
    public static FigureField Run { get; } = new("run", "Run to judge", "", 1, 8, "Of a log in which controller or logger began anew; the longest when left out.", IsWhole: true);

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } = [Target, FullOutput, Room, Run, From, To];
}
