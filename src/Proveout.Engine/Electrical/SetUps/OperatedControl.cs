namespace Proveout.Engine.Electrical;

/// <summary>A control held in a position other than its rest position.</summary>
/// <param name="Part">Designation of the part that it is on.</param>
/// <param name="Control">Its name.</param>
/// <param name="Position">Where it is held.</param>
public sealed record OperatedControl(string Part, string Control, string Position);
