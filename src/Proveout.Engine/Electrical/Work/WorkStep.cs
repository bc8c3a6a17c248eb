using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A step of the wiring work.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Stage">What is wired.</param>
/// <param name="Between">The two parts that its conductors run between; empty when it is a whole stage.</param>
/// <param name="Conductors">The conductors to fit, in order.</param>
public sealed record WorkStep(int Number, WorkStage Stage, string Between, ValueList<Conductor> Conductors)
{
    /// <summary>What is wired, in words.</summary>
    public string Title => Between.Length == 0 ? StageWords : $"{StageWords}: {Between}";

    private string StageWords => Stage switch
    {
        WorkStage.ProtectiveBonding => "Protective bonding",
        WorkStage.Mains => "Mains, from the inlet inwards",
        WorkStage.Supplies => "Extra-low-voltage supplies, from the source outwards",
        WorkStage.Loads => "Heaters, fans and other loads",
        WorkStage.Motors => "Motors",
        WorkStage.Signals => "Sensors, switches and commands",
        _ => "Data",
    };
}
