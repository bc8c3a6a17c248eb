using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>What a wire list would change in a machine.</summary>
/// <param name="Edits">The changes.</param>
/// <param name="Changed">Conductors that are described otherwise.</param>
/// <param name="Added">Conductors that are new.</param>
/// <param name="Removed">Conductors that would be taken out.</param>
/// <param name="Unlisted">Conductors that the list does not have and that stay.</param>
/// <param name="Changes">What differs in the design afterwards, the most dangerous first.</param>
public sealed record WireImport(
    IReadOnlyList<MachineEdit> Edits,
    IReadOnlyList<string> Changed,
    IReadOnlyList<string> Added,
    IReadOnlyList<string> Removed,
    IReadOnlyList<string> Unlisted,
    IReadOnlyList<DesignChange> Changes);
