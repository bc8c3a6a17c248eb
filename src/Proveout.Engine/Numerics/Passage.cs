namespace Proveout.Engine.Numerics;

/// <summary>How the way of a port passes a block, by the places of <see cref="Bridges.PlaceIn"/>.</summary>
/// <param name="Port">Number of the port.</param>
/// <param name="FromA">Place of the node where the way comes to the block from the port's first node.</param>
/// <param name="ToB">Place of the node where it leaves the block to the second.</param>
internal readonly record struct Passage(int Port, int FromA, int ToB);
