using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>What pushing by hand and short commanded moves show.</summary>
internal sealed class MoveChecks(MotionDesign motion, DriveMotion designed)
{
    private const double JogMm = 10;
    private const double MarkTurn = 45;
    private const double NoTurnDegrees = 5;

    public IEnumerable<DriveCheck> All() => Axes().SelectMany(OfAxis).Concat(designed.Motors.Select(Output));

    /// <summary>How far a motor's mark is asked to turn by a push: half a turn, within the travel.</summary>
    private double PushMm(int axis) => Math.Min(
        Math.Round(0.5 / Motors(axis).Max(motor => Math.Abs(Turns(motor, axis)))), Math.Floor((motion.Axes[axis].High - motion.Axes[axis].Low).Millimeters / 4));

    private IEnumerable<int> Axes() => Enumerable.Range(0, motion.Axes.Count).Where(axis => Motors(axis).Any());

    private IEnumerable<int> Motors(int axis) => Enumerable.Range(0, designed.Motors.Count).Where(motor => Turns(motor, axis) != 0);

    private double Turns(int motor, int axis) => designed.TurnsPerMm(motor, axis) ?? 0;

    private IEnumerable<DriveCheck> OfAxis(int axis)
    {
        var name = motion.Axes[axis].Name;
        yield return new(
            $"push-free:{name}", "push-free", DriveSetUps.Push, $"Push {name} both ways",
            $"From the middle push {name} gently each way, the other axes held. Enter the shorter way until it stops or binds.",
            "mm", "Belts of constant length let it go to its stops.", 30, state => FreeWay(state, axis));
        foreach (var motor in Motors(axis))
            yield return Push(axis, motor);
        foreach (var seen in Axes().Where(other => Motors(other).Intersect(Motors(axis)).Any()))
            yield return Jog(axis, seen);
    }

    // Stops may lie beyond the travel, so that a belt that does not bind sets no upper limit.
    private ReadingInterval FreeWay(DriveState state, int axis)
    {
        var (least, most) = state.FreeWay(motion.Axes[axis].Name);
        var half = (motion.Axes[axis].High - motion.Axes[axis].Low).Millimeters / 2;
        return state.Built.Slack.Length > 0
            ? ReadingInterval.Anything
            : new(Math.Max(0, least - HandTolerances.WayMm), most < half ? most + HandTolerances.WayMm : ReadingInterval.OverRange);
    }

    private DriveCheck Push(int axis, int motor)
    {
        var (name, way) = (motion.Axes[axis].Name, PushMm(axis));
        return new(
            $"push-turn:{name}:{designed.Motors[motor]}", "push-turn", DriveSetUps.Push, $"Mark of {designed.Motors[motor]} while {name} is pushed",
            string.Create(CultureInfo.InvariantCulture, $"Push {name} by +{way:0} mm, the other axes held. Enter how far the mark of {designed.Motors[motor]} turns: to the left above 0, to the right below, seen as the plane is drawn."),
            "°", "Teeth take the belt along.", 20,
            state => state.MovesSurely(name, way) && state.Drive.TurnsPerMm(motor, axis) is { } turns
                ? DriveCheck.Around(Sense(motor) * 360 * way * turns, HandTolerances.MarkDegrees + (HandTolerances.Share * 360 * way * Math.Abs(turns)))
                : ReadingInterval.Anything);
    }

    // Turns of a motor count in its own sense; a mark is seen in the plane's.
    private int Sense(int motor) =>
        motion.Pulleys.Any(pulley => pulley.Driven is { Reversed: true } driven && driven.Motor == designed.Motors[motor]) ? -1 : 1;

    private DriveCheck Output(string motor, int index) => new(
        $"output-turn:{motor}", "output-turn", DriveSetUps.Outputs, $"Mark of {motor} from its own output",
        $"Turn the output for {motor} alone by an eighth of a turn in its positive direction. Enter how far the mark of {motor} itself turns: to the left above 0, to the right below, seen as the plane is drawn.",
        "°", "The output drives its own motor, the right way round.", 45,
        state => state.Built.Outputs.First(plug => plug.Output == motor) is { } plug && plug.Motor == motor
            ? DriveCheck.Around(Sense(index) * plug.Sign * MarkTurn, HandTolerances.MarkDegrees)
            : DriveCheck.Around(0, NoTurnDegrees));

    private DriveCheck Jog(int axis, int seen)
    {
        var (name, other) = (motion.Axes[axis].Name, motion.Axes[seen].Name);
        return new(
            $"jog:{name}:{other}", "jog", DriveSetUps.Jog, $"{other} while {name} is commanded",
            string.Create(CultureInfo.InvariantCulture, $"Command {name} by +{JogMm:0} mm. Enter how far {other} moves."),
            "mm", "Turns of the motors follow from the paths of the belts.", 20,
            state => Moves(state, axis) is { } moves
                ? DriveCheck.Around(JogMm * moves[seen], HandTolerances.RuleMm + (HandTolerances.Share * JogMm * Math.Abs(moves[seen])))
                : ReadingInterval.Anything);
    }

    /// <summary>What moves for a millimetre commanded; null when something binds or slips, so that nobody can say.</summary>
    internal double[]? Moves(DriveState state, int axis) =>
        state.MovesPerMm(designed, axis) is { } moves
        && moves.Select((way, at) => way == 0 || state.MovesSurely(motion.Axes[at].Name, Math.Abs(JogMm * way))).All(sure => sure) ? moves : null;
}
