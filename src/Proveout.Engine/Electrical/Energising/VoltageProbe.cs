using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Two places between which volts are measured.</summary>
/// <param name="Red">Node of the red lead.</param>
/// <param name="Black">Node of the black lead.</param>
/// <param name="RedPoint">Where the red lead touches.</param>
/// <param name="BlackPoint">Where the black lead touches.</param>
/// <param name="IsAlternating">True for alternating, false for direct voltage.</param>
internal sealed record VoltageProbe(int Red, int Black, CheckPoint RedPoint, CheckPoint BlackPoint, bool IsAlternating)
{
    // Input resistance of a hand-held meter on volts; common practice.
    private const double MeterOhms = 10e6;

    /// <summary>True when it is across the poles of a supply.</summary>
    public bool IsSupply => RedPoint.Side.Length == 0 && !IsAlternating;

    /// <summary>The meter as a part of the circuit.</summary>
    public Join Meter => new(Red, Black, MeterOhms, MeterOhms);

    /// <summary>The volts in a solution.</summary>
    public double Volts(LiveSolution solution) => IsAlternating
        ? (solution.AcVolts(Red) - solution.AcVolts(Black)).Magnitude
        : solution.DcVolts(Red) - solution.DcVolts(Black);
}
