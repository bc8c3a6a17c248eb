using System.Buffers;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Proveout.Engine.Numerics;

/// <summary>The ports that a change concerns, each in a row of its own once it is met, with its resistance and the volts that each update sets up at it. Reused from change to change by one thread.</summary>
/// <remarks>Rows lie in groups of as many as one register takes; in each group the volts of the first update, then those of the next.</remarks>
internal sealed class PortRows(Ports ports)
{
    private readonly (int Turn, int Row)[] _rowOf = new (int, int)[ports.Pairs.Length];
    private readonly int[] _port = new int[RowsFor(ports)];
    private double[] _volts = [];
    private int _updates;
    private int _turn;

    /// <summary>Number of rows in a group.</summary>
    public static int Lanes => Vector256<double>.Count;

    /// <summary>Number of ports that were met.</summary>
    public int Count { get; private set; }

    /// <summary>Resistance of each before the change, in ohms.</summary>
    public double[] Before { get; } = new double[RowsFor(ports)];

    /// <summary>Ohms up to which a change of it is none.</summary>
    public double[] Unseen { get; } = new double[RowsFor(ports)];

    /// <summary>What the change leaves of it, in ohms; not a number where that is not found here.</summary>
    public double[] Ohms { get; } = new double[RowsFor(ports)];

    /// <summary>Begins with no port, for a change with some updates.</summary>
    public void Start(int updates)
    {
        (Count, _updates) = (0, updates);
        _turn++;
        _volts = ArrayPool<double>.Shared.Rent(_port.Length * updates);
    }

    /// <summary>Gives back the room of the volts once they are used.</summary>
    public void LeaveVolts() => ArrayPool<double>.Shared.Return(_volts);

    /// <summary>The port of a row.</summary>
    public int PortOf(int row) => _port[row];

    /// <summary>True when a port was met, with its row.</summary>
    public bool Holds(int port, out int row)
    {
        (var turn, row) = _rowOf[port];
        return turn == _turn;
    }

    /// <summary>The row of a port, which is met if it was not yet.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Of(int port)
    {
        var (turn, row) = _rowOf[port];
        return turn == _turn ? row : NewRow(port);
    }

    /// <summary>Adds to the volts that an update sets up at a port.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(int port, int update, double volts)
    {
        var row = Of(port);
        _volts[((row & -Lanes) * _updates) + (update * Lanes) + (row & (Lanes - 1))] += volts;
    }

    /// <summary>The volts of a group of rows, those of the first update first.</summary>
    public ref double VoltsOf(int firstRow) => ref _volts[firstRow * _updates];

    private int NewRow(int port)
    {
        var row = Count++;
        if ((row & (Lanes - 1)) == 0)
            _volts.AsSpan(row * _updates, Lanes * _updates).Clear();
        _rowOf[port] = (_turn, row);
        (_port[row], Before[row], Unseen[row], Ohms[row]) = (port, ports.Ohms(port), ports.UnseenOhms(port), ports.Ohms(port));
        return row;
    }

    private static int RowsFor(Ports ports) => (ports.Pairs.Length + Lanes - 1) / Lanes * Lanes;
}
