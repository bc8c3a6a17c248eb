using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Puts a motor sheet into the form that faces show.</summary>
internal static class MotorViews
{
    public static MotorView Of(MotorCase parts)
    {
        var load = parts is { Drive: { } drive, Load: { } asked, Acceleration: { } acceleration, MetresPerSecond: { } speed } ? LoadOf(parts.Axis, drive, asked, acceleration, speed) : null;
        return new MotorView(
            new StepsView(parts.Axis.StepsByMillimetre, 1000 * parts.Axis.MetresByMotorTurn, 1000 * parts.Axis.FullStepMetres),
            parts.Setting is { } setting ? new CurrentView(setting.RmsAmperes, setting.PeakAmperes, setting.CopperWatts, setting.Words) : null,
            parts.Drive is null ? null : CurveOf(parts.Axis, parts.Drive),
            load,
            parts.Belt is null ? null : ResonanceOf(parts),
            [.. MotorPlots.Of(parts, load)]);
    }

    private static CurveView CurveOf(AxisDrive axis, StepperDrive drive)
    {
        var rise = InductiveLimit.RiseSeconds(drive.Motor.Inductance.Henries, drive.Motor.Resistance.Ohms, drive.Supply.Volts, drive.PeakAmperes);
        return new CurveView(
            drive.HoldsCurrent,
            1000 * axis.MetresPerSecond(drive.CornerRadiansPerSecond),
            drive.CornerRadiansPerSecond / (2 * Math.PI),
            1000 * axis.MetresPerSecond(drive.HighestRadiansPerSecond),
            drive.TorqueAt(0),
            double.IsFinite(rise) ? 1e6 * rise : null);
    }

    private static LoadView LoadOf(AxisDrive axis, StepperDrive drive, AxisLoad load, double acceleration, double speed)
    {
        var available = Math.Max(0, drive.TorqueAt(axis.RadiansPerSecond(speed)));
        var margin = new LostStepsMargin(load.Torque(acceleration), available);
        var (verdict, words) = margin.Verdict switch
        {
            MarginVerdict.Enough => ("enough", "Twice the torque that is needed, or more, is there at the highest speed."),
            MarginVerdict.Thin => ("thin", "More torque than needed is there at the highest speed, but less than twice: a rough rail or a resonance can cost steps."),
            _ => ("loses-steps", "Less torque than needed is there at the highest speed: steps will be lost. Go slower, accelerate less, or raise the supply voltage within the driver's limit."),
        };
        return new LoadView(
            margin.NeededNewtonMetres,
            available,
            margin.Ratio,
            margin.LagFullSteps is { } lag ? 1000 * lag * axis.FullStepMetres : null,
            load.Acceleration(available / LostStepsMargin.UsualMargin),
            1000 * axis.MetresPerSecond(drive.SpeedForTorque(LostStepsMargin.UsualMargin * margin.NeededNewtonMetres)),
            verdict,
            string.Create(CultureInfo.InvariantCulture, $"{words} Needed {SensibleDigits.Of(margin.NeededNewtonMetres)} N·m, there {SensibleDigits.Of(available)} N·m."));
    }

    private static ResonanceView ResonanceOf(MotorCase parts)
    {
        var belt = parts.Belt!;
        var softest = Math.Clamp(belt.Mass.LoopMetres / 2, belt.ShortestRun, belt.LongestRun);
        return new ResonanceView(
            belt.Mass.LowestHertz(belt.ShortestRun, belt.LongestRun),
            Math.Max(belt.Mass.ResonanceHertz(belt.ShortestRun), belt.Mass.ResonanceHertz(belt.LongestRun)),
            belt.Mass.Stiffness(softest) / 1000,
            parts.Acceleration is { } acceleration ? 1000 * belt.Mass.Deflection(softest, belt.Mass.Kilograms * acceleration) : null);
    }
}
