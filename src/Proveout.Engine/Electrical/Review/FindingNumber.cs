namespace Proveout.Engine.Electrical;

/// <summary>A number of a finding.</summary>
/// <param name="Name">What it is, such as <c>current</c>.</param>
/// <param name="Value">Its value.</param>
/// <param name="Unit">Its unit as written, such as <c>A</c>.</param>
public sealed record FindingNumber(string Name, double Value, string Unit);
