using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A machine file that the guided start made.</summary>
/// <param name="Name">What the machine is called.</param>
/// <param name="Text">The file.</param>
/// <param name="Design">The machine in it.</param>
/// <param name="Guesses">What in it nobody said.</param>
public sealed record StartedFile(string Name, string Text, MachineDesign Design, IReadOnlyList<Guess> Guesses);
