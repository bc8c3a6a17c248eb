using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Conductors that are laid out together; a sheet holds one band or several.</summary>
/// <param name="Function">What its conductors serve.</param>
/// <param name="Conductors">Those.</param>
internal sealed record Band(WireFunction Function, IReadOnlyList<Conductor> Conductors);
