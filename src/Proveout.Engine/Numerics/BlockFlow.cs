namespace Proveout.Engine.Numerics;

/// <summary>One ampere from a node of an island to another, made ready to ask many nodes for their potential.</summary>
/// <param name="Entry">Where it is fed in.</param>
/// <param name="Exit">Where it is taken.</param>
/// <param name="Block">The one block that it flows in; below zero when it passes several.</param>
/// <param name="Top">The top of that block, which is its ground.</param>
/// <param name="OfEntry">Transfer resistances of the entry to each node of the block by its place; null when it is the top.</param>
/// <param name="OfExit">The same of the exit.</param>
internal readonly record struct BlockFlow(int Entry, int Exit, int Block, int Top, BlockColumn? OfEntry, BlockColumn? OfExit);
