namespace Proveout.Engine.Machine;

/// <summary>A point of a belt's path.</summary>
/// <param name="At">Name of the pulley or anchor.</param>
/// <param name="Turn">Which way it bends there.</param>
/// <param name="HalfTurn">True when the span that leads to it has half a turn of twist.</param>
public sealed record BeltPoint(string At, BeltTurn Turn, bool HalfTurn);
