using UnitsNet;

namespace Proveout.Engine.Motion;

/// <summary>
/// A stepper at a supply, driven with sines in phase with its back-EMF: V² = (R I + Ke w)² + (p w L I)², I the peak, p the pole pairs, w the speed of the shaft
/// (two-phase synchronous machine in steady state; textbooks of electrical machines, from memory). Iron losses, detent and the drop in the driver are left out, and so
/// is what leads of the current beyond the back-EMF's phase could still win, so real curves lie near this one: allow a margin.
/// </summary>
/// <param name="Motor">The motor.</param>
/// <param name="PeakAmperes">Peak current that is set.</param>
/// <param name="Supply">Supply voltage.</param>
public sealed record StepperDrive(StepperRating Motor, double PeakAmperes, ElectricPotential Supply)
{
    /// <summary>True when the supply can drive the current into the standing motor at all: V above R I.</summary>
    public bool HoldsCurrent => Supply.Volts > Motor.Resistance.Ohms * PeakAmperes;

    /// <summary>Speed of the shaft above which the set current can no longer be driven and torque falls, in rad/s; 0 when it cannot even at rest.</summary>
    public double CornerRadiansPerSecond => SpeedFor(PeakAmperes);

    /// <summary>Speed at which nothing is left: the back-EMF is all the supply has, in rad/s.</summary>
    public double HighestRadiansPerSecond => Supply.Volts / Motor.TorqueConstant;

    /// <summary>The highest speed at which a torque is there, in rad/s; 0 when the motor does not have it at rest.</summary>
    public double SpeedForTorque(double newtonMetres)
    {
        var peak = newtonMetres / Motor.TorqueConstant;
        return peak > PeakAmperes ? 0 : SpeedFor(peak);
    }

    /// <summary>Peak current that can be driven at a speed, at most the one set.</summary>
    public double PeakAt(double radiansPerSecond)
    {
        if (radiansPerSecond <= CornerRadiansPerSecond)
            return Math.Min(PeakAmperes, Supply.Volts / Motor.Resistance.Ohms);
        var (resistance, emf) = (Motor.Resistance.Ohms, Motor.TorqueConstant * radiansPerSecond);
        var reactance = Motor.PolePairs * radiansPerSecond * Motor.Inductance.Henries;
        return PositiveRoot((resistance * resistance) + (reactance * reactance), 2 * resistance * emf, (emf * emf) - (Supply.Volts * Supply.Volts));
    }

    /// <summary>Most torque at a speed, in N·m.</summary>
    public double TorqueAt(double radiansPerSecond) => Motor.TorqueConstant * PeakAt(radiansPerSecond);

    private double SpeedFor(double peak)
    {
        var (emf, reactance) = (Motor.TorqueConstant, Motor.PolePairs * Motor.Inductance.Henries * peak);
        var drop = Motor.Resistance.Ohms * peak;
        return PositiveRoot((emf * emf) + (reactance * reactance), 2 * drop * emf, (drop * drop) - (Supply.Volts * Supply.Volts));
    }

    // The root of a x² + b x + c above zero, in the form that does not cancel; 0 when there is none.
    private static double PositiveRoot(double square, double linear, double constant) => constant >= 0
        ? 0
        : -2 * constant / (linear + Math.Sqrt((linear * linear) - (4 * square * constant)));
}
