using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Which machine.</summary>
internal sealed record MachineShape(string Id, string Name, string Fingerprint, int Parts, int Conductors)
{
    public static MachineShape Of(LoadedMachine machine) =>
        new(machine.Id, machine.Design.Name, machine.Fingerprint, machine.Design.Parts.Count, machine.Design.Conductors.Count);
}
