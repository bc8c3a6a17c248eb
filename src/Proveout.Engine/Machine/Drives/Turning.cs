namespace Proveout.Engine.Machine;

/// <summary>How a motor turns a pulley or screw.</summary>
/// <param name="Motor">Designation of the motor.</param>
/// <param name="MotorTurns">Turns of the motor for one turn of what it drives.</param>
/// <param name="Reversed">True when a positive turn of the motor turns it to the right, seen as the plane is drawn.</param>
/// <param name="FullSteps">Full steps in a turn of the motor.</param>
public sealed record Turning(string Motor, double MotorTurns, bool Reversed, int FullSteps)
{
    /// <summary>Full steps of the usual two-phase hybrid motor of 1.8 degrees.</summary>
    public const int UsualFullSteps = 200;
}
