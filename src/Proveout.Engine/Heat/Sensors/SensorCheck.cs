using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>A check of a temperature sensor: at which temperatures it is made, and what is compared.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="SetUp">Identifier of its set-up.</param>
/// <param name="Title">A few words.</param>
/// <param name="Instruction">What to do.</param>
/// <param name="FromCelsius">Coldest that the sensor may be.</param>
/// <param name="ToCelsius">Hottest that it may be.</param>
/// <param name="MeterShare">Uncertainty of the reading as a share of it.</param>
/// <param name="MeterUnits">Uncertainty of the reading in its unit, on top.</param>
/// <param name="InOhms">True when resistance is read at the plug; false when what is shown is compared with a thermometer.</param>
/// <param name="CostSeconds">Time that it takes.</param>
internal sealed record SensorCheck(
    string Id, string SetUp, string Title, string Instruction, double FromCelsius, double ToCelsius, double MeterShare, double MeterUnits, bool InOhms, double CostSeconds)
{
    /// <summary>Every check, the cheapest first. A thermometer is right to 1 K (common practice), a hand-held meter to 1 % and some digits.</summary>
    public static IReadOnlyList<SensorCheck> All { get; } =
    [
        new("ohms-at-room", "sensor-unplugged", "Resistance at the loose plug", "Measure between the two contacts of the loose plug, in a room of 18 °C to 26 °C.", 18, 26, 0.01, 0.5, true, 60),
        new("cold-compare", "controller-on-heaters-off", "Shown against the room", "Take what the controller shows less what a thermometer beside the sensor shows; the room may have 10 °C to 35 °C.", 10, 35, 0, 1, false, 60),
        new("warm-compare", "sensor-warmed", "Shown against 60 °C", "At about 60 °C, take what the controller shows less what the thermometer shows.", 55, 65, 0, 1, false, 120),
        new("hot-compare", "sensor-warmed", "Shown against boiling water", "In water that boils (100 °C at sea level, 1 K less for every 300 m), take what the controller shows less what the thermometer shows.", 93, 101, 0, 1, false, 300),
    ];

    /// <summary>The check with what a sound channel shows.</summary>
    public Check Of(ShownSensor sound) => new(
        Id,
        InOhms ? "resistance" : "temperature-difference",
        SetUp,
        Title,
        Instruction,
        [],
        InOhms ? "Ω" : "K",
        Shown(sound),
        InOhms ? "The sensor's curve between these temperatures, its tolerance, cable and meter." : "Tolerances of sensor and pull-up, cable, and a thermometer that is right to 1 K.",
        CostSeconds);

    /// <summary>What it shows of a channel.</summary>
    public ReadingInterval Shown(ShownSensor sensor)
    {
        var (low, high) = InOhms ? sensor.Ohms(FromCelsius, ToCelsius) : sensor.Error(FromCelsius, ToCelsius);
        return new ReadingInterval(low - MeterUnits - (MeterShare * Math.Abs(low)), double.IsPositiveInfinity(high) ? high : high + MeterUnits + (MeterShare * Math.Abs(high)));
    }
}
