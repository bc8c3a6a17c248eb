using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A thing that two people changed at the same time.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Mine">What the one who saves now makes of it, on one line; empty when it is taken out.</param>
/// <param name="Theirs">What the other has saved; empty when it was taken out.</param>
public sealed record EditConflict(EditedThing Thing, string Mine, string Theirs);
