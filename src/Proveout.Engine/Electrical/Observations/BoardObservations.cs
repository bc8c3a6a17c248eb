using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at boards and relays, and three habits.</summary>
internal static class BoardObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "jumpers-look",
            ObservationKinds.Look,
            "Jumpers and small switches",
            "Hold each board against the jumper map of the design and take a photograph for the record.",
            "Every jumper, address and mode switch as drawn.",
            "One elsewhere, one missing, one too many.",
            "None differs.",
            "common practice",
            15,
            sites => sites.Letters("A"),
            ["jumper-wrong", "jumper-missing", "jumper-across", "jumper-extra", "terminator-extra"],
            [
                new("board-setting-wrong", "address, mode and level switches not as drawn", 5e-3, Severity.DoesNotWork,
                    "An address, mode or level switch of {0} is not as drawn.",
                    "A driver stays silent, or travel is double or half."),
            ]),
        new(
            "boards-look",
            ObservationKinds.Look,
            "Boards in their seats",
            "Before power look at the orientation of every plug-in module, at its heat sink, and under the board.",
            "Marks match; 1 mm between sink and pins; spacers under the board.",
            "A module turned or one pin off, a sink on pins, a screw head on a track.",
            "1 mm clear.",
            "common practice",
            15,
            sites => sites.MotorDrivers,
            ["bond-extra", "plug-reversed", "plug-shifted"],
            [
                new("driver-misplaced", "plug-in drivers turned or one pin off", 2e-3, Severity.Damage,
                    "A driver of {0} is turned or one pin off.",
                    "Smoke at the first power."),
                new("driver-sink-touches", "driver heat sinks that touch pins", 1e-3, Severity.Damage,
                    "A heat sink on {0} touches pins.",
                    "A short circuit destroys the driver."),
            ]),
        new(
            "procedure",
            ObservationKinds.Hand,
            "Three habits",
            "Say aloud and sign: isolate before plugging; wait five minutes before touching a supply; push axes by hand slowly, or unplug the motors.",
            "Done so from the first power on.",
            "A board or motor plugged under power, a supply opened, an axis pushed fast.",
            "Five minutes; below 60 V; below 50 mm/s.",
            "IEC 60204-1 clause 6.2.4 for stored charge; the rest common practice",
            20,
            sites => sites.Machine,
            [],
            [
                new("plugged-under-power", "boards or motors plugged under power", 1e-2, Severity.Damage,
                    "A board or motor of {0} was plugged under power.",
                    "A driver dies of the winding's energy; a board latches up."),
                new("stored-charge-ignored", "supplies touched before they are discharged", 1e-3, Severity.Shock,
                    "A supply of {0} was touched before it was discharged.",
                    "325 V stay on its capacitors for minutes."),
                new("axis-pushed-fast", "axes pushed fast by hand", 1e-2, Severity.Damage,
                    "An axis of {0} was pushed fast by hand.",
                    "The motor is a generator: it may harm its driver."),
            ]),
        new(
            "relays-log",
            ObservationKinds.Log,
            "Every relay, contactor and switch at work",
            "Command each relay and contactor, throw each switch, and see that what hangs on each of its contacts comes on and goes off.",
            "Everything behind it comes on and goes off with it.",
            "A load that stays on or off; no click.",
            "Every contact, both ways.",
            "common practice",
            20,
            sites => sites.Parts.Where(site => site.Part!.Type.Controls.Count > 0 || site.Part.Type.ClassLetter is "K" or "R"),
            ["contact-stuck-closed", "contact-never-closes", "element-open", "element-shorted", "wrong-value", "ahead-of-switch"],
            []),
    ];
}
