using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What to look for at heaters and temperature sensors.</summary>
internal static class HeatObservations
{
    public static Observation[] All { get; } =
    [
        new(
            "seat-tug",
            ObservationKinds.Tug,
            "Heaters and sensors in their seats",
            "Cold, pull each heater and sensor lightly by its body; look at its clamp and at how its leads leave it.",
            "Nothing moves; gap at most 0.1 mm; paste or clamp; leads held within 30 mm.",
            "It slides, stands out, or hangs by its leads.",
            "No movement at 5 N; again after the first heat.",
            "common practice",
            15,
            sites => sites.Letters("E", "B"),
            ["element-open", "element-shorted", "body-contact"],
            [
                new("heater-loose", "heaters loose in their seat", 2e-3, Severity.Fire,
                    "{0} is loose in its seat or not bonded all over.",
                    "It overheats where it does not touch, burns out or falls out.", site => site.Part!.Type.ClassLetter == "E"),
                new("sensor-loose", "temperature sensors loose or badly seated", 4e-3, Severity.Fire,
                    "{0} is loose in its bore or has poor thermal contact.",
                    "It reads low: the heater runs at full power.", site => IsTemperature(site)),
                new("lead-near-heat", "leads too near to hot metal", 2e-3, Severity.Fire,
                    "A lead of {0} lies within 20 mm of hot metal without a sleeve.",
                    "Its insulation softens and shorts.", site => site.Part!.Type.ClassLetter == "E"),
            ]),
        new(
            "sensors-cold",
            ObservationKinds.Log,
            "All sensors cold",
            "With everything at room temperature for an hour, read all temperatures at once, motors off and then holding.",
            "All within 2 K of the room and of each other; scatter below 0.2 K.",
            "One that stands apart: 41, 43, 64, 179 °C or 9 °C each name a cause.",
            "Room ± 2 K; standard deviation below 0.2 K, below 0.5 K with motors on.",
            "common practice; beta equation",
            10,
            sites => sites.Letters("B").Where(IsTemperature),
            ["leakage", "sensor-other-type", "poor-mating", "poor-joint", "element-shorted", "element-open", "connectors-exchanged"],
            [
                new("temperature-curve-wrong", "temperature inputs with a wrong curve or pull-up", 1e-2, Severity.Fire,
                    "The curve or pull-up set for {0} is not that of the part.",
                    "It shows a plausible but false temperature: 200 °C may be 223 °C."),
                new("sensor-noise", "temperature signals with noise", 3e-3, Severity.DoesNotWork,
                    "The signal of {0} is noisy.",
                    "The control hunts, or stops for a spike."),
            ]),
        new(
            "sensor-unplug",
            ObservationKinds.Log,
            "Every sensor unplugged once",
            "With heaters off, unplug each temperature sensor and watch what is reported; plug it back.",
            "A fault within 2 s.",
            "A believable temperature, such as 25 °C.",
            "Fault within 2 s.",
            "common practice",
            20,
            sites => sites.Letters("B").Where(IsTemperature),
            ["element-open", "connectors-exchanged"],
            [
                new("sensor-fault-unseen", "open sensors that nothing reports", 3e-3, Severity.Fire,
                    "An open {0} shows a believable temperature.",
                    "The heater runs at full power without end."),
            ]),
        new(
            "heat-pulse",
            ObservationKinds.Log,
            "One heater at a time",
            "From cold, drive each heater alone for 5 to 10 s and watch all temperatures; keep a hand on the switch.",
            "Its own channel rises by 5 to 15 K, the others by less than 1 K; the slope is that of its power.",
            "Another channel rises, or the slope is steeper.",
            "First slope of an 8 mm aluminium plate 0.31 K/s at 0.6 W/cm²; of a 25 g block 2.2 K/s at 50 W.",
            "computed from power over heat capacity",
            60,
            sites => sites.Letters("E"),
            ["parts-exchanged", "connectors-exchanged", "wrong-value", "switch-shorted", "ends-exchanged", "element-open", "element-shorted"],
            [
                new("zone-misassigned", "heaters assigned to another sensor", 5e-3, Severity.Fire,
                    "{0} is assigned to another sensor than its own.",
                    "It runs away until a limit ends it."),
                new("power-limit-unset", "oversized heaters without limit", 5e-3, Severity.Damage,
                    "The power of {0} is not limited to what supply and material bear.",
                    "The supply trips, or material scorches."),
                new("plate-sensor-misplaced", "plate sensors in the mat instead of on the plate", 3e-3, Severity.DoesNotWork,
                    "The sensor of {0} measures the heater, not what it heats.",
                    "The surface is 5 to 20 K below what is shown."),
            ]),
    ];

    private static bool IsTemperature(Site site) =>
        site.Part!.Type is { ClassLetter: "B", Terminals.Count: 2 } type && type.Circuit.OfType<Resistor>().Any(resistor => resistor.Value.Low.Ohms >= 50);
}
