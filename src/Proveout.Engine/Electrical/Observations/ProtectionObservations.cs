using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at what protects a person.</summary>
internal static class ProtectionObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "outlet-hand",
            ObservationKinds.Hand,
            "The outlet and its lead",
            "Use a socket behind a residual-current device, press its test button, read its plate; look at the lead from end to end.",
            "It trips; 30 mA, type A; the lead has an earth core that reads through.",
            "No device, or one that does not trip; a lead without earth.",
            "30 mA trips within 300 ms, 150 mA within 40 ms, not at 15 mA; earth of the lead at most 0.1 Ω and its own copper.",
            "IEC 61008-1",
            60,
            sites => sites.MainsMachine,
            [],
            [
                new("residual-current-device-absent", "no tested residual-current device upstream", 5e-2, Severity.Shock,
                    "No tested residual-current device stands before {0}.",
                    "Nothing ends a current through a person."),
                new("lead-without-earth", "mains or extension leads without earth", 5e-3, Severity.Shock,
                    "The lead to {0} has no sound earth core.",
                    "An insulation fault leaves the frame live."),
            ]),
        new(
            "leakage-log",
            ObservationKinds.Log,
            "Leakage to earth",
            "With a leakage clamp around line and neutral together, switch the branches on one by one.",
            "The sum stays well below what trips.",
            "It trips at random, or with the heater.",
            "At most 9 mA, 30 % of 30 mA.",
            "common practice",
            60,
            sites => sites.MainsMachine,
            ["leakage", "insulation-broken"],
            [
                new("leakage-adds-up", "leakage of several parts that adds up", 5e-3, Severity.DoesNotWork,
                    "The leakage of the supplies and heaters of {0} adds up.",
                    "The residual-current device trips at random."),
            ]),
        new(
            "bonds-look",
            ObservationKinds.Look,
            "Bonding points",
            "Look at every protective conductor's end: metal, washer, screw, stack.",
            "Bare metal under the lug, toothed washer on the metal side, a stud of its own, marked, plated lug.",
            "Paint or plastic in the stack, a screw that holds a part as well, bare aluminium on copper.",
            "Metal to metal with a spring element; one stud for nothing else.",
            "IEC 60204-1 clause 8.2; IEC 60417-5019",
            10,
            sites => sites.FixedEnds.Where(site => site.IsProtective),
            ["bond-missing", "weak-joint", "poor-joint"],
            [
                new("bond-shares-screw", "bonds under a screw that holds something else", 3e-3, Severity.Shock,
                    "The bond {0} shares its screw with a part, or has plastic in its stack.",
                    "It loosens when the part is taken off, or as plastic creeps."),
                new("bond-corrodes", "bonds of unlike metals", 2e-3, Severity.Shock,
                    "The bond {0} puts bare copper on aluminium or steel without a plated lug.",
                    "It corrodes, and the bond is lost in years."),
            ]),
        new(
            "bonds-flex",
            ObservationKinds.Hand,
            "Bonds that move",
            "Move the part through its whole travel and wiggle both ends while reading the bond with four wires; again at 50 h.",
            "The reading changes by less than 10 mΩ.",
            "Drop-outs.",
            "10 mΩ; loop at least 10 times the diameter; class 6 strand.",
            "common practice",
            40,
            sites => sites.Conductors.Where(site => site.IsProtective && site.Conductor!.Route.Count > 0),
            ["bond-missing", "weak-joint"],
            [
                new("bond-breaks-flexing", "bonds that break by flexing", 2e-3, Severity.Shock,
                    "The protective {0} is not made to flex.",
                    "It breaks after hours, and nothing shows it.", site => site.Conductor!.Length.Millimeters > 400),
            ]),
    ];
}
