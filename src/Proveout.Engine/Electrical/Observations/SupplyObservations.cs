using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at supplies, outputs and solid-state relays.</summary>
internal static class SupplyObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "outputs-at-start",
            ObservationKinds.Log,
            "Outputs while the controller starts",
            "With loads unplugged, measure volts at every heater output while the controller is held in reset, starts, and hangs on its data lead alone.",
            "0 V across every output.",
            "The supply's voltage, steady or in pulses.",
            "0 V at every heater output from power-on until it is commanded.",
            "common practice",
            30,
            sites => sites.Letters("A").Where(site => site.Part!.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.Output)),
            ["switch-shorted", "jumper-wrong", "jumper-missing"],
            [
                new("output-on-at-reset", "outputs that are on while starting", 2e-3, Severity.Fire,
                    "An output of {0} is on while it starts.",
                    "A heater runs while nothing watches it."),
                new("rail-back-fed", "rails fed through a data lead", 5e-3, Severity.Damage,
                    "A rail of {0} is fed through its data lead or from two sources.",
                    "The board is half alive with the main supply off."),
            ]),
        new(
            "relay-drive",
            ObservationKinds.Log,
            "Drive and heat of every solid-state relay",
            "With the output commanded on, measure volts at the control terminals and read the control period; after 30 minutes of full load the base temperature.",
            "At least 4 V with the right sign; period 0.1 s or more; base at most 65 °C.",
            "2.5 to 3.5 V, a negative value; pulses of 100 Hz; base above 80 °C.",
            "4 V and 6 to 15 mA; period at least 10 half-waves; base 65 °C.",
            "common practice",
            40,
            sites => sites.Letters("Q"),
            ["part-reversed", "switch-shorted", "leakage"],
            [
                new("relay-drive-low", "relays driven below their threshold", 3e-3, Severity.DoesNotWork,
                    "{0} is driven with too low a voltage.",
                    "It switches by chance, or half."),
                new("relay-pulsed-fast", "zero-crossing relays pulsed too fast", 3e-3, Severity.DoesNotWork,
                    "{0} is pulsed faster than the mains' half-waves.",
                    "Power comes in steps, lights flicker."),
                new("relay-not-cooled", "relays without heat sink or paste", 3e-3, Severity.Fire,
                    "{0} stands on no metal, or without paste.",
                    "It overheats and fails closed."),
            ]),
        new(
            "relay-label",
            ObservationKinds.Label,
            "Print on every solid-state relay",
            "Read load voltage, its kind and current, and terminal numbers on the case.",
            "The kind of current that it switches; 2 to 4 times the load's current.",
            "A VDC type on AC, or an AC type on DC; a rating near the load.",
            "Rating at least 2 times the load.",
            "common practice",
            15,
            sites => sites.Letters("Q"),
            ["sides-exchanged"],
            [
                new("relay-wrong-kind", "relays for another kind of current, or too small", 2e-3, Severity.Fire,
                    "{0} is made for another kind of current, or too small.",
                    "It burns, latches or fails closed."),
            ]),
        new(
            "supplies-log",
            ObservationKinds.Log,
            "Supplies at no load and at full load",
            "Measure each supply at its terminals and at its farthest load, unloaded and with everything on; read the reset reason after the run.",
            "24.0 V within 0.2 V, at least 23.5 V at full load; drop to the load at most 3 %; 5 V at least 4.75 V at the computer.",
            "Outside 23.5 to 24.5 V; dips; 4.4 V at the computer.",
            "24 V: 23.5 to 24.5; 5 V: 4.75 to 5.25; sum of loads at most 80 % of the supply.",
            "IEC 60204-1 clause 12.5 for the drop; the rest common practice",
            40,
            sites => sites.Letters("T"),
            ["poor-joint", "weak-joint", "supplies-joined", "bond-extra"],
            [
                new("supply-trim", "supplies with a moved trimmer", 3e-3, Severity.Damage,
                    "The output of {0} is trimmed to another voltage.",
                    "Parts run hot, or too weak."),
                new("supply-overloaded", "supplies with too much load", 5e-3, Severity.DoesNotWork,
                    "The loads of {0} add up to more than it gives.",
                    "It shuts off and on again when heating."),
                new("rail-sags", "thin or long supply leads", 5e-3, Severity.DoesNotWork,
                    "A lead of {0} drops too much voltage.",
                    "The computer restarts; motors are weak."),
            ]),
    ];
}
