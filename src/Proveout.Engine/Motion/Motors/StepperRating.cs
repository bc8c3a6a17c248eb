using UnitsNet;

namespace Proveout.Engine.Motion;

/// <summary>What the plate or data sheet of a two-phase hybrid stepper says.</summary>
/// <param name="Current">Rated current of each phase with both on: a direct current, which heats like the r.m.s. value of a sine.</param>
/// <param name="Resistance">Of one phase, at 20 °C.</param>
/// <param name="Inductance">Of one phase.</param>
/// <param name="HoldingTorque">With both phases at the rated current.</param>
/// <param name="StepAngle">Full step.</param>
/// <param name="RotorInertia">In kg·m²; zero when not known.</param>
public sealed record StepperRating(
    ElectricCurrent Current, ElectricResistance Resistance, ElectricInductance Inductance, Torque HoldingTorque, Angle StepAngle, MassMomentOfInertia RotorInertia)
{
    /// <summary>Pole pairs: electrical turns for each turn of the shaft, four full steps each; 50 for 1.8°.</summary>
    public double PolePairs => 90 / StepAngle.Degrees;

    /// <summary>Torque for each ampere of peak current of a sine, N·m/A: both phases at I give sqrt(2) Kt I. The same number is the voltage for each rad/s (SI, energy).</summary>
    public double TorqueConstant => HoldingTorque.NewtonMeters / (Math.Sqrt(2) * Current.Amperes);

    /// <summary>Peak of the sine that heats as the rating does: sqrt(2) times the rated current.</summary>
    public double RatedPeakAmperes => Math.Sqrt(2) * Current.Amperes;
}
