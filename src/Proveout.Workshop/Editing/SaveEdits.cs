using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Asks for edits to be saved.</summary>
/// <param name="Base">Number of the revision that the person saw.</param>
/// <param name="Edits">The edits, in order.</param>
/// <param name="Person">Who saves.</param>
public sealed record SaveEdits(int Base, IReadOnlyList<MachineEdit> Edits, string Person);
