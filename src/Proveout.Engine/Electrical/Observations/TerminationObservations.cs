using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at ends, terminals and screws.</summary>
internal static class TerminationObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "terminals-read",
            ObservationKinds.Label,
            "Read every end against its label",
            "At each terminal read the marking, the conductor's label and its colour, seen from the wire side, against the wire list; count the conductors.",
            "Marking, label and list agree; green-yellow is protective earth and nothing else.",
            "An end on another terminal, a colour used for another purpose, a missing end.",
            "None differs.",
            "IEC 60445; IEC 60204-1 clause 13.2; common practice",
            6,
            sites => sites.FixedEnds,
            [
                "end-on-neighbour", "ends-swapped", "ends-exchanged", "sides-exchanged", "line-neutral-swapped", "ahead-of-switch", "contacts-shifted",
                "conductor-missing", "part-reversed", "contact-sense", "bond-missing", "supplies-joined",
            ],
            [
                new("colour-misused", "protective conductors in another colour, or green-yellow for something else", 5e-4, Severity.Shock,
                    "The colour of {0} says something else than what it carries.",
                    "Whoever works on it next trusts the colour and touches a live conductor, or cuts the earth.", site => site.IsMains || site.IsProtective),
            ]),
        new(
            "strands-look",
            ObservationKinds.Look,
            "Ends under a lens",
            "With a light and a lens of 5 to 10 times, look at every end in its clamp.",
            "Ferrule, no strand outside, insulation up to the collar.",
            "Bare strands, shiny solid tinned end, copper outside, insulation under the clamp, two sizes in one clamp.",
            "At most 1 mm of copper visible; strip = sleeve + 1 to 2 mm; lever clamps 11 ± 1 mm, copper to the stop.",
            "DIN 46228-4; common practice",
            4,
            sites => sites.FixedEnds,
            ["bridge", "weak-joint", "poor-joint", "conductor-missing"],
            [
                new("ferrule-missing", "stranded ends without ferrule under a screw", 3e-3, Severity.Fire,
                    "{0} has no ferrule.",
                    "Strands splay and work loose: the joint heats.", site => site.IsScrew),
                new("end-tinned", "tinned ends under a clamp", 1e-3, Severity.Fire,
                    "{0} is tinned.",
                    "Solder flows under pressure: the joint is loose in weeks and heats.", site => site.IsPower),
                new("bare-too-long", "ends stripped too far", 2e-3, Severity.Shock,
                    "{0} shows bare copper outside its clamp.",
                    "It can be touched, or touches its neighbour.", site => site.IsMains),
                new("strip-short", "ends not pushed to the stop", 3e-3, Severity.DoesNotWork,
                    "{0} does not reach the stop of its clamp.",
                    "It pulls out, or makes contact by chance.", site => site.IsLever),
            ]),
        new(
            "tug",
            ObservationKinds.Tug,
            "Tug every end",
            "Pull each conductor along its axis with the force stated, by hand or with a spring balance, and read the force that it held.",
            "Nothing moves.",
            "It slips or comes out.",
            "Holds the clamp pull of its section.",
            "IEC 60999-1 for clamps, from memory; 5 N below 0.2 mm²: common practice",
            4,
            sites => sites.Ends,
            ["weak-joint", "poor-joint", "contact-pushed-back", "conductor-missing", "bond-missing"],
            [
                new("joint-slips", "joints that do not hold", 2e-3, Severity.Fire,
                    "{0} holds less than it should: a loose screw, few strands, a weak crimp.",
                    "One strand passes every resistance test, then heats or breaks."),
            ]),
        new(
            "torque",
            ObservationKinds.Hand,
            "Torque of the screws",
            "With a torque driver, dead and isolated, turn every terminal screw to its torque, and mark it with paint; again after the first heat.",
            "No screw turns.",
            "A screw turns before the driver clicks.",
            "M2.5 0.4, M3 0.5, M3.5 0.8, M4 1.2, M5 2.0 N·m, unless the part says otherwise.",
            "common practice",
            6,
            sites => sites.Parts.Where(HasScrews),
            ["weak-joint", "poor-joint"],
            [
                new("screw-loose", "terminal screws not tightened", 3e-3, Severity.Fire,
                    "A terminal screw of {0} is not tight.",
                    "The joint heats under load."),
            ]),
        new(
            "joints-warm",
            ObservationKinds.Log,
            "Joints after half an hour of full load",
            "After 30 minutes at full load look at all joints with a thermal camera, covers on, or measure millivolts across each at extra-low voltage.",
            "Each joint within 10 K of its twin.",
            "One joint more than 20 K hotter than its twin.",
            "10 K to its twin; below 5 mV per ampere across a joint.",
            "common practice",
            8,
            sites => sites.Parts.Where(site => sites.Ends.Any(end => end.Part == site.Part && end.IsPower)),
            ["weak-joint", "poor-joint", "poor-mating"],
            []),
    ];

    private static bool HasScrews(Site site) => site.Part!.Type.Connectors.Any(connector =>
        connector.Family.StartsWith("screw", StringComparison.Ordinal) || connector.Family.StartsWith("clamp", StringComparison.Ordinal));
}
