using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using UnitsNet;

namespace Proveout.Workshop;

/// <summary>Computes what follows for an axis from its parts.</summary>
public static class MotorSheet
{
    /// <summary>The sheet, or everything that is wrong with the figures.</summary>
    /// <param name="typed">Figures by the names of <see cref="MotorFields"/>.</param>
    public static Outcome<MotorView> Of(IReadOnlyDictionary<string, string> typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var figures = new TypedFigures(typed);
        var drive = DriveOf(figures);
        var motor = MotorOf(figures);
        var supply = figures.Require(MotorFields.Supply);
        var share = figures.Require(MotorFields.Share) / 100;
        var load = LoadOf(figures, drive);
        var (acceleration, speed) = (figures.Read(MotorFields.Acceleration), figures.Read(MotorFields.Speed));
        var belt = BeltOf(figures, load);
        if (figures.Problems.Count > 0)
            return Outcome.Refused<MotorView>(figures.Problems);
        var setting = motor is null ? null : CurrentSetting.Of(motor, share);
        var current = motor is null ? null : new StepperDrive(motor, setting!.PeakAmperes, ElectricPotential.FromVolts(supply));
        return Outcome.Of(MotorViews.Of(new MotorCase(drive, setting, current, load, acceleration, speed / 1000, belt)));
    }

    private static AxisDrive DriveOf(TypedFigures figures)
    {
        var angle = Angle.FromDegrees(figures.Require(MotorFields.StepAngle));
        var microsteps = (int)(figures.Read(MotorFields.Microsteps) ?? 1);
        var gear = figures.Require(MotorFields.Gear);
        var (teeth, lead) = (figures.Read(MotorFields.Teeth), figures.Read(MotorFields.Lead));
        var pitch = figures.Require(MotorFields.Pitch);
        if (teeth is null == lead is null && figures.Problems.Count == 0)
            figures.Refuse(MotorFields.Teeth, "pulley-or-screw", "Give either the teeth of a pulley or the lead of a screw.", "One of the two moves the axis.");
        return lead is { } millimetres
            ? AxisDrive.Screw(angle, microsteps, Length.FromMillimeters(millimetres), gear)
            : AxisDrive.Belt(angle, microsteps, (int)(teeth ?? 1), Length.FromMillimeters(pitch), gear);
    }

    private static StepperRating? MotorOf(TypedFigures figures)
    {
        FigureField[] plate = [MotorFields.Current, MotorFields.Resistance, MotorFields.Inductance, MotorFields.HoldingTorque];
        if (!plate.Any(figures.Has))
            return null;
        double[] values = [.. plate.Select(figures.Require)];
        var (angle, inertia) = (figures.Read(MotorFields.StepAngle), figures.Read(MotorFields.RotorInertia));
        return figures.Problems.Count > 0
            ? null
            : new StepperRating(
                ElectricCurrent.FromAmperes(values[0]),
                ElectricResistance.FromOhms(values[1]),
                ElectricInductance.FromMillihenries(values[2]),
                Torque.FromNewtonMeters(values[3]),
                Angle.FromDegrees(angle ?? 0),
                MassMomentOfInertia.FromGramSquareCentimeters(inertia ?? 0));
    }

    private static AxisLoad? LoadOf(TypedFigures figures, AxisDrive drive)
    {
        var (friction, efficiency, inertia) = (figures.Require(MotorFields.Friction), figures.Require(MotorFields.Efficiency), figures.Require(MotorFields.RotorInertia));
        return figures.Read(MotorFields.Mass) is { } mass
            ? new AxisLoad(drive, mass, friction, MassMomentOfInertia.FromGramSquareCentimeters(inertia).KilogramSquareMeters, efficiency / 100)
            : null;
    }

    private static BeltCase? BeltOf(TypedFigures figures, AxisLoad? load)
    {
        FigureField[] belt = [MotorFields.BeltStiffness, MotorFields.Loop, MotorFields.Travel];
        if (!belt.Any(figures.Has))
            return null;
        double[] values = [.. belt.Select(figures.Require)];
        var shortest = figures.Require(MotorFields.ShortestRun);
        if (load is null)
            figures.Refuse(MotorFields.Mass, "missing-figure", "It is missing.", "A resonance needs the mass that moves.");
        if (values[1] <= shortest + values[2])
            figures.Refuse(MotorFields.Loop, "loop-too-short", "The loop is shorter than the travel and the shortest run together.", "Measure the whole loop, from clamp to clamp, over the idler and back.");
        return load is null ? null : new BeltCase(new BeltDrivenMass(values[0], values[1] / 1000, load.MovedKilograms), shortest / 1000, (shortest + values[2]) / 1000);
    }
}
