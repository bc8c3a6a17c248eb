using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at fans.</summary>
internal static class FanObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "fan-flick",
            ObservationKinds.Hand,
            "Every fan by hand",
            "Dead, flick each fan; look at its leads, its inlet and its screws.",
            "It coasts for 1 to 3 s; leads clipped 5 mm clear; inlet open.",
            "It stops at once; a lead near a blade or a hot block; a covered inlet.",
            "Coasts at least 1 s; inlet clear by 5 mm or a quarter of its diameter.",
            "common practice; gap from memory",
            8,
            sites => sites.Letters("G"),
            [],
            [
                new("fan-blocked", "fans that do not turn freely", 2e-3, Severity.Fire,
                    "{0} does not turn freely: a lead, a tie, a bent frame.",
                    "It draws up to six times its current and what it cools overheats."),
                new("fan-inlet-covered", "fans with a covered inlet", 2e-3, Severity.DoesNotWork,
                    "The inlet of {0} is covered.",
                    "Little air moves."),
                new("fan-lead-loose", "fan leads near blades or hot metal", 2e-3, Severity.Fire,
                    "The lead of {0} can reach a blade or a hot block.",
                    "It is cut and shorts the supply."),
            ]),
        new(
            "fan-command",
            ObservationKinds.Log,
            "Every fan on command",
            "Command each fan output alone from 0 to 100 % and look which fan turns, where it starts, and where its air goes with a paper strip.",
            "The named fan and no other; starts at 40 % or less; air leaves on the side of the struts, as drawn; comes on with heat or motion.",
            "Another fan, none, air the wrong way, two fans against each other.",
            "Start at 40 % or less; sum of start currents below the output's rating.",
            "common practice",
            20,
            sites => sites.Letters("G"),
            ["parts-exchanged", "connectors-exchanged", "part-reversed", "jumper-wrong", "jumper-missing", "switch-shorted", "conductor-missing", "element-open", "end-on-neighbour"],
            [
                new("fan-air-reversed", "fans that blow the wrong way", 5e-3, Severity.Damage,
                    "{0} blows the wrong way or against another.",
                    "What it should cool heats up."),
                new("fan-not-started", "fans that nothing starts", 5e-3, Severity.Damage,
                    "{0} is not started by the heat or motion that it cools.",
                    "Boards reach 70 to 90 °C; material softens above the hot end."),
                new("fan-starts-late", "fans that do not start at low duty", 1e-2, Severity.DoesNotWork,
                    "{0} does not start at low duty.",
                    "There is no air at 10 to 30 %."),
                new("fan-output-overloaded", "too many fans on one output", 2e-3, Severity.Damage,
                    "The output of {0} feeds more than it bears at start.",
                    "The output dies."),
                new("fan-speed-false", "fan speed read while its supply is pulsed", 5e-3, Severity.DoesNotWork,
                    "The speed of {0} is read while its minus lead is pulsed.",
                    "The reading is nonsense."),
            ]),
    ];
}
