using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A powered input with its nodes.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">What it takes.</param>
/// <param name="A">Its positive node, or line.</param>
/// <param name="B">Its negative node, or neutral.</param>
public sealed record ConsumerPort(Part Part, Consumer Element, int A, int B);
