namespace Proveout.Workshop;

/// <summary>The figures that the motor sheet asks for.</summary>
public static class MotorFields
{
    /// <summary>Full step.</summary>
    public static FigureField StepAngle { get; } = new("step-angle", "Full step", "°", 0.3, 90, "1.8° or 0.9° on the plate.", "1.8");

    /// <summary>Microsteps.</summary>
    public static FigureField Microsteps { get; } = new("microsteps", "Microsteps for each full step", "", 1, 1024, "As the driver is set.", "16", IsWhole: true);

    /// <summary>Teeth.</summary>
    public static FigureField Teeth { get; } = new("teeth", "Teeth of the pulley", "", 8, 200, "Count them; leave it empty for a screw.", IsWhole: true);

    /// <summary>Belt pitch.</summary>
    public static FigureField Pitch { get; } = new("pitch", "Pitch of the belt", "mm", 0.5, 20, "2 mm usually; measure over 100 teeth.", "2");

    /// <summary>Lead.</summary>
    public static FigureField Lead { get; } = new("lead", "Lead of the screw", "mm", 0.1, 100, "Travel for each turn: pitch times starts. Leave it empty for a belt.");

    /// <summary>Gear.</summary>
    public static FigureField Gear { get; } = new("gear", "Turns of the motor for each of the pulley or screw", "", 0.01, 1000, "1 without a gear.", "1");

    /// <summary>Rated current.</summary>
    public static FigureField Current { get; } = new("current", "Rated current of each phase", "A", 0.05, 50, "On the plate: with both phases on, which heats like the r.m.s. value of a sine.");

    /// <summary>Resistance.</summary>
    public static FigureField Resistance { get; } = new("resistance", "Resistance of a phase", "ohm", 0.01, 1000, "On the data sheet, or by the dead check of the coil.");

    /// <summary>Inductance.</summary>
    public static FigureField Inductance { get; } = new("inductance", "Inductance of a phase", "mH", 0.01, 1000, "On the data sheet.");

    /// <summary>Holding torque.</summary>
    public static FigureField HoldingTorque { get; } = new("holding-torque", "Holding torque", "N·m", 0.001, 100, "On the data sheet, with both phases at the rated current.");

    /// <summary>Supply.</summary>
    public static FigureField Supply { get; } = new("supply", "Supply voltage", "V", 1, 400, "What the driver gets.", "24");

    /// <summary>Share of the rating.</summary>
    public static FigureField Share { get; } = new("share", "Current that is set, of the rating", "%", 5, 100, "60 to 80 % while moving (common practice).", "70");

    /// <summary>Moved mass.</summary>
    public static FigureField Mass { get; } = new("mass", "Moved mass", "kg", 0.01, 500, "All that moves along the axis.");

    /// <summary>Drag.</summary>
    public static FigureField Friction { get; } = new("friction", "Drag, and weight on an upright axis", "N", 0, 5000, "Pull the carriage with a spring balance, motor unplugged.", "3");

    /// <summary>Acceleration.</summary>
    public static FigureField Acceleration { get; } = new("acceleration", "Acceleration", "m/s²", 0.01, 500, "As the controller is set; 1000 mm/s² is 1 m/s².");

    /// <summary>Speed.</summary>
    public static FigureField Speed { get; } = new("speed", "Highest speed", "mm/s", 0.1, 10_000, "As the controller is set.");

    /// <summary>Rotor.</summary>
    public static FigureField RotorInertia { get; } = new("rotor-inertia", "Inertia of rotor and pulley", "g·cm²", 0, 100_000, "On the data sheet; 50 to 80 g·cm² for a motor 42 mm square and 40 mm long (from memory).", "60");

    /// <summary>Efficiency.</summary>
    public static FigureField Efficiency { get; } = new("efficiency", "Share of the motor's work that reaches the axis", "%", 5, 100, "90 to 95 % for a belt, 30 to 50 % for a sliding screw (common practice).", "90");

    /// <summary>Axial stiffness.</summary>
    public static FigureField BeltStiffness { get; } = new("belt-stiffness", "Belt stiffness E A", "N", 100, 10_000_000, "Force for each unit of strain: the force that lengthens a belt by 1 %, times 100.");

    /// <summary>Loop.</summary>
    public static FigureField Loop { get; } = new("loop", "Length of the belt loop", "mm", 50, 20_000, "From clamp to clamp, all the way round.");

    /// <summary>Shortest run.</summary>
    public static FigureField ShortestRun { get; } = new("shortest-run", "Shortest run from carriage to motor", "mm", 1, 20_000, "With the carriage at the motor's end.", "50");

    /// <summary>Travel.</summary>
    public static FigureField Travel { get; } = new("travel", "Travel", "mm", 1, 20_000, "From end to end.");

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } =
    [
        StepAngle, Microsteps, Teeth, Pitch, Lead, Gear, Current, Resistance, Inductance, HoldingTorque, Supply, Share,
        Mass, Friction, Acceleration, Speed, RotorInertia, Efficiency, BeltStiffness, Loop, ShortestRun, Travel,
    ];
}
