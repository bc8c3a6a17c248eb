namespace Proveout.Engine.Electrical;

/// <summary>An electronic switch with what its data sheet says of its heat.</summary>
/// <param name="Part">Designation of the switch.</param>
/// <param name="Watts">Most heat, while it conducts without a break.</param>
/// <param name="JunctionToBase">Thermal resistance from junction to base in K/W.</param>
/// <param name="JunctionCelsius">Temperature that the junction may reach.</param>
/// <param name="Sink">What carries its heat to the air: a part, or its own body; null when that is not known.</param>
public sealed record SwitchLoss(string Part, double Watts, double JunctionToBase, double JunctionCelsius, SwitchSink? Sink);
