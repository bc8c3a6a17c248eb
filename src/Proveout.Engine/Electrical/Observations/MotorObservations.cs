using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at motors.</summary>
internal static class MotorObservations
{
    public static Observation[] All { get; } =
    [
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
                new("motor-screw-too-long", "screws too long in a motor face", 1e-3, Severity.Damage,
                    "A screw in the face of {0} is too long.",
                    "It shorts the winding."),
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
                new("axis-misassigned", "motors assigned to another axis or direction", 1e-2, Severity.Damage,
                    "{0} is assigned to another axis or direction than it drives.",
                    "It runs into its end; two motors of one axis rack it."),
                new("step-angle-wrong", "motors of another step angle", 2e-3, Severity.DoesNotWork,
                    "{0} has another step angle than is set.",
                    "It travels half or double."),
                new("motor-current-wrong", "motor currents set too high or low", 1e-2, Severity.Damage,
                    "The current of {0} is too high or too low.",
                    "Its case passes 80 °C and the mount creeps, or it loses steps."),
            ]),
    ];
}
