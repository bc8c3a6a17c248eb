namespace Proveout.Engine.Motion;

/// <summary>What an axis asks of its motor.</summary>
/// <param name="Drive">From steps to travel.</param>
/// <param name="MovedKilograms">All that moves along the axis.</param>
/// <param name="FrictionNewtons">Drag of the carriage, and weight on an upright axis.</param>
/// <param name="RotorInertia">Of rotor and pulley, in kg·m².</param>
/// <param name="Efficiency">Share of the motor's work that reaches the axis: near 1 for belts, 0.3 to 0.5 for sliding screws (common practice).</param>
public sealed record AxisLoad(AxisDrive Drive, double MovedKilograms, double FrictionNewtons, double RotorInertia, double Efficiency)
{
    /// <summary>Torque at the shaft that an acceleration asks for, in N·m: the load through the drive, and the rotor itself.</summary>
    public double Torque(double metresPerSecondSquared)
    {
        var byTurn = 2 * Math.PI / Drive.MetresByMotorTurn;
        return (((MovedKilograms * metresPerSecondSquared) + FrictionNewtons) / (byTurn * Efficiency)) + (RotorInertia * byTurn * metresPerSecondSquared);
    }

    /// <summary>Acceleration that a torque gives, in m/s²; 0 when friction takes it all.</summary>
    public double Acceleration(double newtonMetres)
    {
        var byTurn = 2 * Math.PI / Drive.MetresByMotorTurn;
        var free = newtonMetres - (FrictionNewtons / (byTurn * Efficiency));
        return Math.Max(0, free / ((MovedKilograms / (byTurn * Efficiency)) + (RotorInertia * byTurn)));
    }
}
