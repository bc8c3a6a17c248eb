namespace Proveout.Engine.Machine;

/// <summary>A named way that conductors run: a duct, a channel, a drag chain.</summary>
/// <param name="Name">Name, unique in the machine.</param>
/// <param name="Kind">What carries the conductors.</param>
/// <param name="Note">Anything a builder should know; empty when nothing is.</param>
public sealed record Route(string Name, RouteKind Kind, string Note);
