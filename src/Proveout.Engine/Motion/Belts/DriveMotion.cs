using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>How motors and axes move together, from what the belts and screws let move; the axes in one place.</summary>
public sealed class DriveMotion
{
    // Millimetres for a millimetre: a tenth of a millimetre over a metre of travel, far above rounding of places in files.
    private const double Nothing = 1e-4;

    private readonly double[]?[] _turns;
    private readonly double[][] _millimetres;

    private DriveMotion(MotionDesign motion, double[]?[] turns, ValueList<AxisLock> locks)
    {
        (Axes, Motors) = ([.. motion.Axes.Select(axis => axis.Name)], [.. motion.Motors]);
        (_turns, Locks) = (turns, locks);
        _millimetres = Inverse();
    }

    /// <summary>Names of the axes, in the order of the design.</summary>
    public ValueList<string> Axes { get; }

    /// <summary>Designations of the motors, in the order of the design.</summary>
    public ValueList<string> Motors { get; }

    /// <summary>What the belts do not let move freely; empty for a sound machine.</summary>
    public ValueList<AxisLock> Locks { get; }

    /// <summary>The axes that no motor holds.</summary>
    public IEnumerable<string> Loose => Axes.Where((_, axis) => _turns.All(row => row is null || Math.Abs(row[axis]) <= Nothing / 100));

    /// <summary>The motors that the axes do not hold: they turn without moving anything.</summary>
    public IEnumerable<string> Idle => Motors.Where((_, motor) => _turns[motor] is not { } row || row.All(turns => turns == 0));

    /// <summary>Turns that a motor makes for a millimetre of an axis alone; null when the axes do not say it.</summary>
    public double? TurnsPerMm(int motor, int axis) => _turns[motor]?[axis];

    /// <summary>Millimetres that an axis moves for a turn of a motor while the others stand; the least-squares share when motors must turn together.</summary>
    public double MmPerTurn(int axis, int motor) => _millimetres[axis][motor];

    /// <summary>True when a motor can move its axes only together with others.</summary>
    public bool IsTied(int motor)
    {
        // With its row and column the product of turns and millimetres is a projection; a motor that is free has 1 on its diagonal.
        return _turns[motor] is { } row && Math.Abs(row.Select((turns, axis) => turns * _millimetres[axis][motor]).Sum() - 1) > Nothing && row.Any(turns => turns != 0);
    }

    /// <summary>Works it out.</summary>
    /// <param name="motion">The design.</param>
    /// <param name="places">Where the axes stand.</param>
    /// <param name="give">Lengthening in millimetres for a millimetre that belts take without locking anything.</param>
    public static DriveMotion Of(MotionDesign motion, ValueList<double> places, double give = Nothing)
    {
        ArgumentNullException.ThrowIfNull(motion);
        string[] shafts =
        [
            .. motion.Pulleys.Where(pulley => pulley.Kind is PulleyKind.Toothed).Select(pulley => pulley.ShaftName).Concat(motion.Screws.Select(screw => screw.Name)).Distinct(),
        ];
        var axes = motion.Axes.Count;
        // Shafts first: what they cannot take up is then left in rows of axes alone.
        double[][] rows = [.. DriveEquations.Of(motion, shafts, places).Select(row => (double[])[.. row[axes..], .. row[..axes]])];
        var pivots = RowReduction.Run(rows, shafts.Length, Nothing);
        var rank = pivots.Count(row => row >= 0);
        double[][] left = [.. rows.Skip(rank).Select(row => row[shafts.Length..])];
        var held = RowReduction.Run(left, axes, give).Count(row => row >= 0);
        return new(motion, [.. motion.Motors.Select(motor => TurnsOf(motion, motor, shafts, rows, pivots))], [.. left.Take(held).Select(row => LockOf(motion, row))]);
    }

    private static double[]? TurnsOf(MotionDesign motion, string motor, string[] shafts, double[][] rows, int[] pivots)
    {
        var driven = motion.Pulleys.Where(pulley => pulley.Driven?.Motor == motor).Select(pulley => (Shaft: pulley.ShaftName, Driven: pulley.Driven!))
            .Concat(motion.Screws.Where(screw => screw.Driven.Motor == motor).Select(screw => (Shaft: screw.Name, screw.Driven)))
            .First();
        var pivot = pivots[Array.IndexOf(shafts, driven.Shaft)];
        if (pivot < 0 || rows[pivot].Take(shafts.Length).Count(factor => Math.Abs(factor) > Nothing) > 1)
            return null;
        var motorTurnsARadian = driven.Driven.MotorTurns * (driven.Driven.Reversed ? -1 : 1) / (2 * Math.PI);
        return [.. rows[pivot].Skip(shafts.Length).Select(factor => -factor * motorTurnsARadian).Select(turns => Math.Abs(turns) < Nothing / 1000 ? 0 : turns)];
    }

    private static AxisLock LockOf(MotionDesign motion, double[] row) => new(
        [.. motion.Axes.Select((axis, at) => new AxisShare(axis.Name, row[at])).Where(share => Math.Abs(share.Factor) > Nothing)]);

    // (KᵀK)⁻¹Kᵀ: the axes that a turn of one motor moves, and their best share where motors must turn together.
    private double[][] Inverse()
    {
        double Turns(int motor, int axis) => _turns[motor]?[axis] ?? 0;
        var (axes, motors) = (Axes.Count, Motors.Count);
        double[][] normal =
        [
            .. Enumerable.Range(0, axes).Select(row => (double[])
            [
                .. Enumerable.Range(0, axes).Select(column => Enumerable.Range(0, motors).Sum(motor => Turns(motor, row) * Turns(motor, column))),
                .. Enumerable.Range(0, motors).Select(motor => Turns(motor, row)),
            ]),
        ];
        var pivots = RowReduction.Run(normal, axes, Nothing * Nothing);
        return [.. pivots.Select(row => row < 0 ? new double[motors] : normal[row][axes..])];
    }
}
