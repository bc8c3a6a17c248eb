using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at boards, motors, switches and data.</summary>
internal static class MotionObservations
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
                new("board-setting-wrong", "address, mode and level switches not as drawn", 5e-3, Severity.DoesNotWork, "An address, mode or level switch of {0} is not as drawn.", "A driver stays silent, or travel is double or half."),
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
                new("driver-misplaced", "plug-in drivers turned or one pin off", 2e-3, Severity.Damage, "A driver of {0} is turned or one pin off.", "Smoke at the first power."),
                new("driver-sink-touches", "driver heat sinks that touch pins", 1e-3, Severity.Damage, "A heat sink on {0} touches pins.", "A short circuit destroys the driver."),
            ]),
        new(
            "motor-screws",
            ObservationKinds.Look,
            "Screws in the motor face",
            "Compare the screws with the thickness of the plate before fitting.",
            "Plate plus 3 to 4 mm.",
            "Longer than plate plus thread.",
            "Thread 4 to 4.5 mm deep.",
            "common practice",
            6,
            sites => sites.Letters("M"),
            ["body-contact", "element-shorted"],
            [
                new("motor-screw-too-long", "screws too long in a motor face", 1e-3, Severity.Damage, "A screw in the face of {0} is too long.", "It shorts the winding."),
            ]),
        new(
            "motor-jog",
            ObservationKinds.Log,
            "Every motor alone",
            "At low current and with a hand on the stop, move each motor by a few millimetres, belts off where two share an axis; measure 100 mm; feel the case after an hour of holding.",
            "The named axis moves, in the named direction, by the distance told; at most 60 °C on plastic, 80 °C on metal.",
            "Another axis, the other direction, a hum without turning; 50 or 200 mm for 100; too hot or too weak.",
            "Direction as drawn; 100 ± 0.5 mm; case at most 60 °C on plastic.",
            "common practice",
            30,
            sites => sites.Letters("M"),
            ["parts-exchanged", "connectors-exchanged", "conductors-exchanged", "ends-swapped", "conductor-missing", "element-open", "contacts-mirrored"],
            [
                new("axis-misassigned", "motors assigned to another axis or direction", 1e-2, Severity.Damage, "{0} is assigned to another axis or direction than it drives.", "It runs into its end; two motors of one axis rack it."),
                new("step-angle-wrong", "motors of another step angle", 2e-3, Severity.DoesNotWork, "{0} has another step angle than is set.", "It travels half or double."),
                new("motor-current-wrong", "motor currents set too high or low", 1e-2, Severity.Damage, "The current of {0} is too high or too low.", "Its case passes 80 °C and the mount creeps, or it loses steps."),
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
                new("plugged-under-power", "boards or motors plugged under power", 1e-2, Severity.Damage, "A board or motor of {0} was plugged under power.", "A driver dies of the winding's energy; a board latches up."),
                new("stored-charge-ignored", "supplies touched before they are discharged", 1e-3, Severity.Shock, "A supply of {0} was touched before it was discharged.", "325 V stay on its capacitors for minutes."),
                new("axis-pushed-fast", "axes pushed fast by hand", 1e-2, Severity.Damage, "An axis of {0} was pushed fast by hand.", "The motor is a generator: it may harm its driver."),
            ]),
        new(
            "switch-reach",
            ObservationKinds.Hand,
            "Every switch and button by hand",
            "Slide each axis slowly to its end, press every button; for a fork sensor look at flag and light.",
            "It operates 0.5 to 2 mm before the hard stop and springs back; the stop latches.",
            "It is not reached, goes too far, sits behind the stop; a contact block has come off.",
            "0.5 to 2 mm before the stop; flag 2 mm past the beam.",
            "common practice",
            12,
            sites => sites.Letters("B", "S").Where(site => site.Part!.Type.Controls.Count > 0 || site.Part.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.Signal) && site.Part.Type.Terminals.Count == 3),
            ["contact-sense", "contact-stuck-closed", "contact-never-closes"],
            [
                new("switch-not-reached", "switches that are not reached", 5e-3, Severity.Damage, "{0} is not reached, or goes too far.", "The axis runs into its end."),
            ]),
        new(
            "switch-press",
            ObservationKinds.Log,
            "Every input by hand",
            "Press each switch by hand, one at a time, then unplug it, and watch all inputs; count false triggers in ten minutes of motion far from the ends; home the first time slowly from the middle.",
            "Only the named input changes; unplugged reads as operated; no false trigger; it homes towards the switch.",
            "Another input, none, several; unplugged reads as free; triggers in mid-move.",
            "0 false triggers in 10 minutes; first homing at most 10 mm/s.",
            "common practice",
            20,
            sites => sites.Letters("B", "S").Where(site => site.Part!.Type.Controls.Count > 0 || site.Part.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.Signal) && site.Part.Type.Terminals.Count == 3),
            ["parts-exchanged", "connectors-exchanged", "contact-sense", "contacts-shifted", "end-on-neighbour", "conductor-missing"],
            [
                new("input-floating", "inputs without pull-up", 3e-3, Severity.Damage, "The input of {0} has no sound pull-up.", "It triggers at random."),
                new("input-noise", "inputs that trigger by interference", 3e-3, Severity.DoesNotWork, "The lead of {0} picks up interference.", "A move stops in the middle."),
                new("input-not-fail-safe", "inputs on which a broken wire reads as free", 5e-3, Severity.Damage, "A broken wire of {0} reads as not reached.", "The axis runs into its end."),
                new("homing-direction", "axes that home away from their switch", 5e-3, Severity.Damage, "The axis of {0} homes away from its switch.", "It runs into the other end."),
            ]),
        new(
            "data-log",
            ObservationKinds.Log,
            "Data for an hour",
            "Scan for every node, then run an hour with heat and motion and read the error counts and the volts at each port.",
            "Every node once, no error, no drop; 4.75 V or more at each device.",
            "A node missing or twice, errors that come with heat, motion or length.",
            "0 errors in 1 h; 4.75 to 5.25 V.",
            "ISO 11898-2 for the line; common practice for the count",
            60,
            sites => sites.DataParts,
            ["terminator-extra", "jumper-extra", "jumper-missing", "data-cores-missing", "ends-swapped", "conductors-exchanged", "conductor-missing", "poor-joint"],
            [
                new("bit-rate-wrong", "nodes with another rate or a double address", 5e-3, Severity.DoesNotWork, "{0} has another rate than the line, or an address twice.", "It never answers, or two vanish by turns."),
                new("data-topology", "stubs, stars and untwisted pairs", 5e-3, Severity.DoesNotWork, "The data line at {0} has a long stub, a star or an untwisted run.", "Errors grow with rate and length."),
                new("data-lead-noise", "long or unscreened data leads", 5e-3, Severity.DoesNotWork, "The data lead of {0} is too long, unscreened or beside motor leads.", "The device drops out when axes move."),
                new("port-overloaded", "ports with too much load", 3e-3, Severity.DoesNotWork, "The port of {0} gives more than it can.", "Devices drop out."),
            ]),
        new(
            "screens-look",
            ObservationKinds.Look,
            "Screens and light strips",
            "Look where each screen ends, and at the arrow printed on a light strip.",
            "Screen clamped round at its intended end; arrow away from the controller; printed voltage as fed.",
            "A screen open, on a long pigtail or carrying current; a strip fed at its end.",
            "One intended end, or both by a clamp.",
            "common practice",
            10,
            sites => sites.DataParts.Concat(sites.Letters("E").Where(IsStrip)),
            ["bond-extra"],
            [
                new("screen-open", "screens open or on a pigtail", 3e-3, Severity.DoesNotWork, "The screen at {0} is open or ends in a pigtail.", "Noise enters.", site => !IsStrip(site)),
                new("strip-wrong-end", "light strips fed at the wrong end or voltage", 2e-3, Severity.Damage, "{0} is fed at its output end or at another voltage.", "It stays dark, or burns.", IsStrip),
            ]),
    ];

    private static bool IsStrip(Site site) => site.Part!.Type.Connectors.Any(connector => connector.Family == "solder-pad");
}
