using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>What goes on one sheet of a schematic.</summary>
/// <param name="Function">What its conductors serve.</param>
/// <param name="Conductors">Those.</param>
internal sealed record SheetPlan(WireFunction Function, IReadOnlyList<Conductor> Conductors);
