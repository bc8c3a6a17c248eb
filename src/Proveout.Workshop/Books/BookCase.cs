using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What the chapters of a book are made of.</summary>
/// <param name="Planned">The machine with its plan.</param>
/// <param name="Energising">The order of energising it.</param>
internal sealed record BookCase(PlannedMachine Planned, EnergisingView Energising)
{
    /// <summary>The build that the book tells of; null when it tells of none.</summary>
    public BuildStory? Story { get; init; }

    /// <summary>The machine.</summary>
    public MachineDesign Design => Planned.Machine.Design;
}
