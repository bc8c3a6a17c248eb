using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>What follows from belts and motors as built: what moves what, and where it binds.</summary>
internal sealed class DriveState
{
    private const double StepMm = 1;

    private readonly Dictionary<string, (double AtLeast, double AtMost)> _freeWays;

    private DriveState(MotionDesign design, BuiltDrives built)
    {
        (Design, Built) = (design, built);
        Middle = AxisPlaces.Middle(design);
        Drive = DriveMotion.Of(built.Motion, Middle, HandTolerances.HiddenGive);
        Changed = [.. built.Motion.Belts.Where(belt => built.IsChanged(design, belt))];
        _freeWays = design.Axes.ToDictionary(axis => axis.Name, FreeWayOf, StringComparer.Ordinal);
    }

    public MotionDesign Design { get; }

    public BuiltDrives Built { get; }

    public ValueList<double> Middle { get; }

    public DriveMotion Drive { get; }

    /// <summary>Belts whose path is another than designed.</summary>
    public ValueList<Belt> Changed { get; }

    public static DriveState Of(MotionDesign design, BuiltDrives built) => new(design, built);

    /// <summary>How far an axis alone moves from the middle before a belt binds, the shorter way, in millimetres: at least and at most.</summary>
    public (double AtLeast, double AtMost) FreeWay(string axis) => _freeWays[axis];

    /// <summary>True when an axis surely moves as far as a short check asks, as its motors turn and belts hold.</summary>
    public bool MovesSurely(string axis, double millimetres) =>
        Built.Slack.Length == 0 && FreeWay(axis).AtLeast >= millimetres && Drive.Locks.All(held => held.Shares.All(share => share.Axis != axis));

    /// <summary>How far every axis moves when one is commanded by a millimetre; null when motors and belts do not settle it.</summary>
    public double[]? MovesPerMm(DriveMotion designed, int commanded)
    {
        var motors = Enumerable.Range(0, designed.Motors.Count).ToList();
        var turns = new double[motors.Count];
        foreach (var motor in motors)
        {
            var plug = Built.Outputs.First(plug => plug.Output == designed.Motors[motor]);
            turns[designed.Motors.Index().First(item => item.Item == plug.Motor).Index] = plug.Sign * (designed.TurnsPerMm(motor, commanded) ?? 0);
        }

        double[] moves = [.. Enumerable.Range(0, designed.Axes.Count).Select(axis => motors.Sum(motor => Drive.MmPerTurn(axis, motor) * turns[motor]))];
        var settled = motors.All(motor => Drive.Axes.Select((_, axis) => Drive.TurnsPerMm(motor, axis) * moves[axis]).Sum() is { } made
            && Math.Abs(made - turns[motor]) <= HandTolerances.HiddenGive * (Math.Abs(turns[motor]) + Math.Abs(made)));
        return settled && motors.All(motor => Drive.TurnsPerMm(motor, 0) is not null) ? moves : null;
    }

    private (double AtLeast, double AtMost) FreeWayOf(Axis axis)
    {
        var index = Design.Axes.Index().First(item => item.Item == axis).Index;
        var half = (axis.High - axis.Low).Millimeters / 2;
        var (least, most) = (half, half);
        foreach (var belt in Changed.Where(belt => AxisPlaces.RiddenBy(Built.Motion, belt).Contains(axis.Name)))
        {
            var start = BeltPath.At(Built.Motion, belt, Middle)!.LengthMm;
            foreach (var direction in new[] { -1, 1 })
                for (var way = 0.0; way < most; way += StepMm)
                {
                    var stretch = BeltPath.At(Built.Motion, belt, Moved(index, direction * (way + StepMm))) is { } path ? (path.LengthMm - start) / start : double.PositiveInfinity;
                    least = stretch > HandTolerances.LeastGive ? Math.Min(least, way) : least;
                    most = stretch > HandTolerances.MostGive ? Math.Min(most, way + StepMm) : most;
                }
        }

        return (least, most);
    }

    private ValueList<double> Moved(int axis, double millimetres) => [.. Middle.Select((place, at) => place + (at == axis ? millimetres : 0))];
}
