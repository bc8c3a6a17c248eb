using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for along the ways of the conductors.</summary>
internal static class RoutingObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "chain-look",
            ObservationKinds.Look,
            "Drag chains",
            "Measure the radius, look into the chain from both ends, count strands of what flexes; after 20 to 50 cycles look for a spiral.",
            "Radius and fill within the limits, cables side by side and free, held at both ends, flexible strand.",
            "A tight radius, cables crossing or tied inside, a corkscrew, a solid or seven-strand wire.",
            "Radius at least 7.5 times the thickest cable, 10 when screened; fill at most 60 %, gap 10 % of the diameter; fixed 10 to 30 diameters from the end.",
            "common practice",
            40,
            sites => sites.Routes.Where(site => site.Route!.Kind == RouteKind.Chain),
            ["bridge-in-cable"],
            [
                new("chain-radius", "chains bent too tight for their cables", 3e-3, Severity.Fire,
                    "The radius of {0} is too small for its thickest cable.",
                    "Strands break within weeks."),
                new("chain-too-full", "chains too full or with crossing cables", 3e-3, Severity.DoesNotWork,
                    "{0} is too full, or its cables cross or are tied together.",
                    "The chain rides up, cables twist."),
                new("cable-twisted", "cables laid twisted", 3e-3, Severity.DoesNotWork,
                    "A cable in {0} was laid twisted.",
                    "It grows into a corkscrew and breaks."),
                new("chain-end-free", "chains without strain relief", 5e-3, Severity.DoesNotWork,
                    "A cable at the end of {0} is not held.",
                    "It creeps and pulls at its plug."),
                new("stiff-wire-flexed", "stiff wire where it moves", 3e-3, Severity.Fire,
                    "A conductor in {0} is solid or coarse, or has a soldered joint where it flexes.",
                    "It breaks at a strand, then heats."),
            ]),
        new(
            "travel-hand",
            ObservationKinds.Hand,
            "Full travel by hand",
            "Dead, move every axis slowly to all its ends and corners, open and close lids twenty times, and watch every cable.",
            "Loose at both ends of travel, clear of belt, fan, heater and stop.",
            "A cable that pulls tight, touches, chafes, or blocks the travel.",
            "Free everywhere; slack of 10 to 20 mm at each plug.",
            "common practice",
            60,
            sites => sites.Routes.Where(site => site.Route!.Kind is RouteKind.Chain or RouteKind.Bundle),
            ["bridge-in-cable", "bridge-to-metal", "bond-missing", "conductor-missing"],
            [
                new("cable-too-short", "cables too short for the travel", 5e-3, Severity.DoesNotWork,
                    "A cable of {0} pulls tight at an end of the travel.",
                    "It pulls at its plug and breaks at the crimp."),
                new("cable-touches", "cables that reach moving or hot parts", 5e-3, Severity.Damage,
                    "A cable of {0} reaches a belt, fan, heater or stop.",
                    "It jams, chafes or melts."),
                new("cable-chafes", "cables that chafe", 3e-3, Severity.Fire,
                    "A cable of {0} rubs on an edge, a belt or a screw.",
                    "The insulation wears through."),
            ]),
        new(
            "bundles-look",
            ObservationKinds.Look,
            "Bundles, ties and loops",
            "Look along every route at ties, cut tails and what is left to pull a board out.",
            "Ties turn by hand, tails cut flush; 100 to 150 mm of spare at boards, a loop along the hinge.",
            "A tie that bites, a sharp tail, no spare, a wire straight across a hinge.",
            "Ties turn by hand; 100 mm of spare.",
            "common practice",
            15,
            sites => sites.Routes,
            ["bridge-in-cable"],
            [
                new("tie-too-tight", "ties that bite", 5e-3, Severity.DoesNotWork,
                    "A tie on {0} bites into the insulation.",
                    "Cores are crushed; tails cut hands."),
                new("no-service-loop", "boards that cannot be pulled out", 5e-3, Severity.DoesNotWork,
                    "The conductors of {0} leave no spare.",
                    "At service something is torn off."),
                new("hinge-without-loop", "wires straight across a hinge", 2e-3, Severity.DoesNotWork,
                    "The conductors of {0} cross a hinge without a loop.",
                    "They break.", site => site.Route!.Kind == RouteKind.Bundle),
            ]),
    ];
}
