namespace Proveout.Engine.Motion;

/// <summary>Checks of pulleys and idlers by hand that no reading of a path replaces, and the torques of their screws.</summary>
public static class HandChecks
{
    private const string Practice = "common practice";
    private const string Dead = "Isolate, lock off and prove dead; pull the motor's plug.";

    /// <summary>The checks, in the order to do them.</summary>
    public static IReadOnlyList<HandCheck> All { get; } =
    [
        new("Free running of idlers", Dead, "With the belt off, flick each idler with a finger.", "It coasts for a second or more, without a rough place.",
            "Stops at once: its screw presses on the outer ring, or the washer that touches the inner ring alone is missing.", Practice),
        new("Drag of a carriage", Dead, "Pull the carriage slowly with a spring balance over the whole travel.", "2 to 5 N, even to within 20 %.",
            "More or uneven: a tight idler, a rubbing belt, a rail under strain.", Practice),
        new("Set screws", Dead, "Mark shaft and pulley with one line; try each set screw with its key.", "One screw stands on the shaft's flat, the second is tightened after it; the key does not turn at the torque below.",
            "The line parts after some hours: the screw is beside the flat.", Practice),
        new("Height of pulleys", Dead, "Measure with a rule from the motor's face to the middle of the teeth, and compare with the drawing.", "Within 0.3 mm.",
            "More than 1 mm: the belt slopes and rubs a rim.", Practice),
        new("Alignment", Dead, "Lay a straight edge over both pulleys of a span.", "0.25° or less: 0.4 mm over 100 mm.", "More than 0.5°: edge wear, black dust.", Practice),
        new("End float", Dead, "Push and pull each shaft and idler along its axis.", "No play to be felt; a shaft in plain bearings up to 0.1 mm.", "Play: a collar, a washer or a circlip is missing.", Practice),
        new("Rims", Dead, "Turn each stacked idler by hand and look along the belt.", "The rims are outside, the belt between them, clear of both.", "Rims reversed: the belt climbs out.", Practice),
    ];

    /// <summary>Torques in newton metres: screw, torque, remark. For steel screws; a part's data sheet goes first.</summary>
    public static IReadOnlyList<(string Screw, double NewtonMetres, string Remark)> Torques { get; } =
    [
        ("M3 set screw in a pulley", 0.7, "with thread-locking compound away from plastics; common practice"),
        ("M4 set screw in a pulley", 1.7, "from memory; common practice"),
        ("M3 screw in a motor's face", 0.8, "thread 4 to 4.5 mm deep: plate plus 3 to 4 mm of screw, no longer; from memory"),
        ("M5 axle of an idler through bearings", 1.5, "until the inner rings touch, no more; from memory"),
    ];
}
