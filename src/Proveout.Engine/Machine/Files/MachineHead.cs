namespace Proveout.Engine.Machine;

/// <summary>What a machine is, without its parts.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Summary">One or two sentences on what it is.</param>
/// <param name="Mains">The supply it is made for; null when there is none.</param>
internal sealed record MachineHead(string Name, string Summary, MainsSupply? Mains);
