namespace Proveout.Engine.Motion;

/// <summary>
/// A carriage on a belt loop that a motor holds at one end: two springs from the carriage to the motor's pulley, the straight run and the way around the idler, and the
/// motor's own magnetic spring behind them. Both runs must stay taut for both to count.
/// </summary>
/// <param name="BeltStiffnessNewtons">Force for each unit of strain, E A, in N.</param>
/// <param name="LoopMetres">Length of the loop, carriage clamp to carriage clamp.</param>
/// <param name="Kilograms">Moved mass.</param>
/// <param name="MotorNewtonsPerMetre">The motor's spring, seen at the belt; infinite when it is taken as rigid.</param>
public sealed record BeltDrivenMass(double BeltStiffnessNewtons, double LoopMetres, double Kilograms, double MotorNewtonsPerMetre = double.PositiveInfinity)
{
    /// <summary>The motor's spring at the belt, in N/m: p T (2 pi / travel)², the slope of p-fold sine torque at its middle.</summary>
    public static double MotorSpring(StepperRating motor, double torque, AxisDrive drive)
    {
        ArgumentNullException.ThrowIfNull(motor);
        ArgumentNullException.ThrowIfNull(drive);
        var byTurn = 2 * Math.PI / drive.MetresByMotorTurn;
        return motor.PolePairs * torque * byTurn * byTurn;
    }

    /// <summary>Stiffness at the carriage, in N/m, with the straight run to the motor this long.</summary>
    public double Stiffness(double runMetres)
    {
        var belt = BeltStiffnessNewtons * ((1 / runMetres) + (1 / (LoopMetres - runMetres)));
        return double.IsInfinity(MotorNewtonsPerMetre) ? belt : belt * MotorNewtonsPerMetre / (belt + MotorNewtonsPerMetre);
    }

    /// <summary>First resonance of the mass on it, in Hz: sqrt(k / m) / 2 pi (one mass, one spring).</summary>
    public double ResonanceHertz(double runMetres) => Math.Sqrt(Stiffness(runMetres) / Kilograms) / (2 * Math.PI);

    /// <summary>Lowest resonance over a travel; it lies where both ways are nearest to equal.</summary>
    public double LowestHertz(double shortestRun, double longestRun) => ResonanceHertz(Math.Clamp(LoopMetres / 2, shortestRun, longestRun));

    /// <summary>How far the carriage gives way under a force, in m.</summary>
    public double Deflection(double runMetres, double newtons) => newtons / Stiffness(runMetres);
}
