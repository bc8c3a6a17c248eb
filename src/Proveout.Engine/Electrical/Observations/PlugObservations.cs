using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at plugs and on the plates of parts.</summary>
internal static class PlugObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "plugs-read",
            ObservationKinds.Label,
            "Read every plug against its socket",
            "Compare the label of each plug with its socket, its contact 1 and its order of colours with the drawing, from the wire side.",
            "Same text on plug, socket and diagram; contact 1 at pin 1.",
            "No label, another label, a plug turned or one pin off.",
            "None differs.",
            "IEC 60204-1 clause 13.2; common practice",
            5,
            sites => sites.Plugs,
            [
                "connectors-exchanged", "contacts-mirrored", "conductors-exchanged", "plug-shifted", "plug-reversed", "ends-swapped", "end-on-neighbour", "part-reversed",
                "contacts-shifted", "conductor-missing", "data-cores-missing", "parts-exchanged",
            ],
            [
                new("plug-unlabelled", "plugs without label", 5e-3, Severity.Damage,
                    "The {0} has no label, or not the text of its socket.",
                    "At the next service it goes into a like socket."),
            ]),
        new(
            "crimps-look",
            ObservationKinds.Look,
            "Crimped contacts under a lens",
            "Look at each contact of the plug from the side and from the mating face.",
            "Bare wire shows between the two crimps, 0.5 to 1 mm beyond the wire crimp; all contacts level.",
            "Insulation inside the wire crimp, a contact too large or small, one behind the others.",
            "Bare wire visible between the crimps; wire inside the contact's range of sections.",
            "IEC 60352-2; common practice",
            8,
            sites => sites.Plugs,
            ["weak-joint", "poor-joint", "contact-pushed-back", "bridge"],
            [
                new("insulation-in-crimp", "insulation inside a wire crimp", 2e-3, Severity.DoesNotWork,
                    "A contact of the {0} is crimped on insulation.",
                    "It looks perfect and comes and goes."),
                new("contact-size", "wire too thin or thick for its contact", 2e-3, Severity.DoesNotWork,
                    "A wire of the {0} is outside the range of its contact.",
                    "The crimp works loose."),
                new("contact-overloaded", "plug contacts with too much current", 1e-3, Severity.Fire,
                    "The {0} carries more than two thirds of what its contacts bear.",
                    "The plastic browns and melts.", site => site.IsPower),
            ]),
        new(
            "plugs-wiggle",
            ObservationKinds.Hand,
            "Every plug by hand",
            "Dead, push each plug home until it clicks, wiggle it, and look at its face and its pins.",
            "It clicks and does not move; no contact stands back, no pin is bent or brown.",
            "A plug half in, a bent pin, a contact that gives way.",
            "Seated to its stop.",
            "common practice",
            5,
            sites => sites.Plugs,
            ["poor-mating", "contact-pushed-back"],
            []),
        new(
            "ratings-label",
            ObservationKinds.Label,
            "Rating of every part",
            "Read what is printed on each part against the parts list: voltage, power, resistance, type.",
            "As listed, and there.",
            "Another voltage, power or type, or no part.",
            "None differs.",
            "common practice",
            6,
            sites => sites.Letters("B", "E", "G", "K", "M", "P", "R"),
            ["wrong-value", "sensor-other-type", "parts-exchanged", "element-open"],
            []),
    ];
}
