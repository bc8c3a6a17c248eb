using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>An output that holds a current, with the winding that it drives.</summary>
/// <param name="Driver">The part with the output.</param>
/// <param name="Output">The output.</param>
/// <param name="Winding">The winding, an element of the motor.</param>
public sealed record MotorPhase(Part Driver, HeldCurrent Output, NetworkElement Winding);
