using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at data lines, screens and light strips.</summary>
internal static class DataObservations
{
    public static Observation[] All { get; } =
    [
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
            ["terminator-extra", "jumper-extra", "jumper-missing", "data-cores-missing", "ends-swapped", "conductors-exchanged", "conductor-missing", "poor-joint", "element-open", "element-shorted"],
            [
                new("bit-rate-wrong", "nodes with another rate or a double address", 5e-3, Severity.DoesNotWork,
                    "{0} has another rate than the line, or an address twice.",
                    "It never answers, or two vanish by turns."),
                new("data-topology", "stubs, stars and untwisted pairs", 5e-3, Severity.DoesNotWork,
                    "The data line at {0} has a long stub, a star or an untwisted run.",
                    "Errors grow with rate and length."),
                new("data-lead-noise", "long or unscreened data leads", 5e-3, Severity.DoesNotWork,
                    "The data lead of {0} is too long, unscreened or beside motor leads.",
                    "The device drops out when axes move."),
                new("port-overloaded", "ports with too much load", 3e-3, Severity.DoesNotWork,
                    "The port of {0} gives more than it can.",
                    "Devices drop out."),
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
                new("screen-open", "screens open or on a pigtail", 3e-3, Severity.DoesNotWork,
                    "The screen at {0} is open or ends in a pigtail.",
                    "Noise enters.", site => !IsStrip(site)),
                new("strip-wrong-end", "light strips fed at the wrong end or voltage", 2e-3, Severity.Damage,
                    "{0} is fed at its output end or at another voltage.",
                    "It stays dark, or burns.", IsStrip),
            ]),
    ];

    private static bool IsStrip(Site site) => site.Part!.Type.Connectors.Any(connector => connector.Family == "solder-pad");
}
