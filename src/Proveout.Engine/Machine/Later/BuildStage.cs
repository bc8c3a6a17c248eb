namespace Proveout.Engine.Machine;

/// <summary>A machine at a stage of its building.</summary>
/// <param name="Fitted">What has just been fitted; null for the stage before anything that comes later.</param>
/// <param name="Missing">What is not fitted yet, in the order in which it will be.</param>
/// <param name="Design">The machine as it then is.</param>
public sealed record BuildStage(LaterFitting? Fitted, ValueList<LaterFitting> Missing, MachineDesign Design);
