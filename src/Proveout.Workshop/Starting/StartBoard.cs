namespace Proveout.Workshop;

/// <summary>A kind of controller board that a machine is started with.</summary>
/// <param name="Answer">Its answer to the question.</param>
/// <param name="Type">Its type in the catalogue.</param>
/// <param name="Words">What it has, for people.</param>
/// <param name="Motors">How many motors it moves, or drivers it tells to.</param>
/// <param name="Stops">How many limit switches it reads.</param>
/// <param name="Heats">Its outputs for heaters.</param>
/// <param name="PlateOutput">Output that commands the switch of a plate; null when a heater output does.</param>
/// <param name="Outputs">Its outputs that switch 24 V, those for heaters first.</param>
/// <param name="Temperatures">How many temperatures it reads.</param>
/// <param name="Fans">How many fans it, or the line for its fans, takes.</param>
/// <param name="FanVolts">Voltages that its fans may have.</param>
internal sealed record StartBoard(
    string Answer, string Type, string Words, int Motors, int Stops, IReadOnlyList<string> Heats, string? PlateOutput, IReadOnlyList<string> Outputs, int Temperatures, int Fans, IReadOnlyList<int> FanVolts)
{
    public static readonly StartBoard Seven = new(
        "seven", "motion-controller-7", "7 motors, 3 heaters, 5 fans", 7, 6, ["HEAT0", "HEAT1"], "RLY", ["HEAT0", "HEAT1"], 4, 5, [24, 12, 5]);

    public static readonly StartBoard Four = new(
        "four", "motion-controller-4", "4 motors, 2 heaters, 2 fans", 4, 4, ["OUT0", "OUT1"], null, ["OUT0", "OUT1"], 2, 2, [24, 5]);

    public static readonly StartBoard StepFour = new(
        "step-four", "step-controller-4", "4 drivers of their own", 4, 6, [], null, ["OUT0", "OUT1"], 0, 4, [24]);

    public static readonly IReadOnlyList<StartBoard> All = [Seven, Four, StepFour];

    /// <summary>True when each motor has a driver of its own.</summary>
    public bool HasOwnDrivers => ReferenceEquals(this, StepFour);

    /// <summary>How many heaters it can command, a plate among them.</summary>
    public int Heaters => Heats.Count + (PlateOutput is null ? 0 : 1);
}
