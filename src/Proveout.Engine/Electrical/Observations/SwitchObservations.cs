using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at switches and buttons.</summary>
internal static class SwitchObservations
{
    public static Observation[] All { get; } =
    [
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
            sites => sites.Letters("B", "S").Where(IsSwitch),
            ["contact-sense", "contact-stuck-closed", "contact-never-closes"],
            [
                new("switch-not-reached", "switches that are not reached", 5e-3, Severity.Damage,
                    "{0} is not reached, or goes too far.",
                    "The axis runs into its end."),
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
            sites => sites.Letters("B", "S").Where(IsSwitch),
            ["parts-exchanged", "connectors-exchanged", "contact-sense", "contacts-shifted", "end-on-neighbour", "conductor-missing"],
            [
                new("input-floating", "inputs without pull-up", 3e-3, Severity.Damage,
                    "The input of {0} has no sound pull-up.",
                    "It triggers at random."),
                new("input-noise", "inputs that trigger by interference", 3e-3, Severity.DoesNotWork,
                    "The lead of {0} picks up interference.",
                    "A move stops in the middle."),
                new("input-not-fail-safe", "inputs on which a broken wire reads as free", 5e-3, Severity.Damage,
                    "A broken wire of {0} reads as not reached.",
                    "The axis runs into its end."),
                new("homing-direction", "axes that home away from their switch", 5e-3, Severity.Damage,
                    "The axis of {0} homes away from its switch.",
                    "It runs into the other end."),
            ]),
    ];

    // With a lever or button, or a fork sensor with its three wires.
    private static bool IsSwitch(Site site) =>
        site.Part!.Type is var type
        && (type.Controls.Count > 0 || (type.Terminals.Count == 3 && type.Terminals.Any(terminal => terminal.Role == TerminalRole.Signal)));
}
