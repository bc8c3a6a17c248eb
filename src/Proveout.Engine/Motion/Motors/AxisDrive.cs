using UnitsNet;

namespace Proveout.Engine.Motion;

/// <summary>From the steps of a motor to the travel of an axis.</summary>
/// <param name="StepAngle">Full step, 1.8 or 0.9 degrees usually.</param>
/// <param name="Microsteps">Parts that a full step is divided into.</param>
/// <param name="TravelByTurn">Travel for each turn of the pulley or screw.</param>
/// <param name="GearRatio">Turns of the motor for each turn of the pulley or screw.</param>
public sealed record AxisDrive(Angle StepAngle, int Microsteps, Length TravelByTurn, double GearRatio)
{
    /// <summary>A toothed pulley that moves a belt.</summary>
    public static AxisDrive Belt(Angle stepAngle, int microsteps, int teeth, Length pitch, double gearRatio = 1) => new(stepAngle, microsteps, teeth * pitch, gearRatio);

    /// <summary>A screw by its lead: pitch times starts.</summary>
    public static AxisDrive Screw(Angle stepAngle, int microsteps, Length lead, double gearRatio = 1) => new(stepAngle, microsteps, lead, gearRatio);

    /// <summary>Full steps for each turn of the motor.</summary>
    public double FullStepsByTurn => 360 / StepAngle.Degrees;

    /// <summary>Travel of the axis for each turn of the motor, in m.</summary>
    public double MetresByMotorTurn => TravelByTurn.Meters / GearRatio;

    /// <summary>What the controller is told: microsteps for each millimetre (geometry).</summary>
    public double StepsByMillimetre => FullStepsByTurn * Microsteps / (1000 * MetresByMotorTurn);

    /// <summary>Travel of one full step, in m: what the axis may be off by without a step lost (common practice).</summary>
    public double FullStepMetres => MetresByMotorTurn / FullStepsByTurn;

    /// <summary>Speed of the axis from that of the motor's shaft.</summary>
    public double MetresPerSecond(double radiansPerSecond) => radiansPerSecond * MetresByMotorTurn / (2 * Math.PI);

    /// <summary>Speed of the motor's shaft from that of the axis.</summary>
    public double RadiansPerSecond(double metresPerSecond) => metresPerSecond * 2 * Math.PI / MetresByMotorTurn;

    /// <summary>Force on the axis from a torque at the motor's shaft, losses aside.</summary>
    public double Newtons(double newtonMetres) => newtonMetres * 2 * Math.PI / MetresByMotorTurn;
}
