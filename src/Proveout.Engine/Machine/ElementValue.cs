namespace Proveout.Engine.Machine;

/// <summary>A resistance that a machine gives anew for one element of a part.</summary>
/// <param name="Element">Name of the element on the part's type.</param>
/// <param name="Value">Its resistance.</param>
public sealed record ElementValue(string Element, ResistanceBand Value);
