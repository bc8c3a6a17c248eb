namespace Proveout.Engine.Electrical;

/// <summary>A junction of the wiring: open below its forward voltage, which it holds once it conducts.</summary>
/// <param name="Anode">Node of its anode.</param>
/// <param name="Cathode">Node of its cathode.</param>
/// <param name="LowVolts">Lowest forward voltage at a meter's current.</param>
/// <param name="HighVolts">Highest.</param>
internal readonly record struct Junction(int Anode, int Cathode, double LowVolts, double HighVolts);
