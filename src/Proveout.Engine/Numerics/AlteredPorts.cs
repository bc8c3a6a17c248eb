using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Proveout.Engine.Numerics;

/// <summary>The ports within one island that a change of the network alters, and what it leaves of them. Reused from change to change by one thread.</summary>
/// <remarks>
/// Block by block on the ways of the updates: the volts that an update sets up in a block between the nodes where a port passes it add up along the port's way to those at the port. All of
/// them have one sign, for beyond a node that the two ways share both go on alike, and what a current to that node sets up is nowhere negative; so nothing is lost by adding. Bridges that
/// are altered add what they have more. The corrections by the inverse of the updates (<see cref="ChangedNetwork"/>) are then taken of four ports at a time. A port whose way passes a bridge
/// that is cut, one whose nodes are in different pieces, and one that doubles cannot tell, is not a number here.
/// </remarks>
internal sealed class AlteredPorts(Ports ports, ChangedNetwork network, PortPieces pieces)
{
    // Each product of the sum is right to a few units in the last place of a double, 1.1e-16; so the result is right to 1e-10 or better.
    private const double LeastShare = 1e-5;

    // A way with fewer is not looked at twice.
    private const int LeastBlocks = 6;

    private readonly BlockVolts _volts = new();
    private readonly PortRows _rows = new(ports);
    private int _updates;
    private double[] _inverse = [];

    /// <summary>Takes the change that the network has now.</summary>
    public void Take()
    {
        _updates = network.Pieces.Updates.Length;
        _rows.Start(_updates);
        AddBridges();
        if (_updates > 0 && !TookOneFlow())
        {
            AddFlows();
            Correct();
        }

        _rows.LeaveVolts();
        if (!network.Pieces.AreSections)
            LeaveOutParted();
    }

    /// <summary>True when a port is altered, or is not a number here.</summary>
    /// <param name="port">Number of the port.</param>
    /// <param name="ohms">What the change leaves of it.</param>
    public bool Alters(int port, out double ohms)
    {
        var isMet = _rows.Holds(port, out var row);
        ohms = isMet ? _rows.Ohms[row] : 0;
        return isMet && IsAltered(row);
    }

    /// <summary>Sets the bits of those that are altered, or are not a number here.</summary>
    public void AddTo(Span<ulong> mask)
    {
        for (var row = 0; row < _rows.Count; row++)
            if (IsAltered(row))
                mask[_rows.PortOf(row) / 64] |= 1UL << (_rows.PortOf(row) % 64);
    }

    private bool IsAltered(int row) => !(Math.Abs(_rows.Ohms[row] - _rows.Before[row]) <= _rows.Unseen[row]);

    private void AddBridges()
    {
        var bridges = ports.Network.Bridges;
        foreach (var run in network.Pieces.Sections)
            if (bridges.NodeAt(run.Start) is var below && bridges.EdgeAbove(below) is >= 0 and var edge)
                AddBridge(below, edge);
    }

    private void AddBridge(int below, int edge)
    {
        var joint = network.Pieces.JointOf(edge);
        var more = joint < 0 ? double.NaN : DoubleDouble.Difference(network.Pieces.Joints[joint].Ohms, (DoubleDouble)1 / ports.Network.EdgeOf(edge).Conductance);
        var passages = ports.Passages.Of(below);
        foreach (var passage in passages)
        {
            ref var ohms = ref _rows.Ohms[_rows.Of(passage.Port)];
            ohms = ohms + more is var left && left >= LeastShare * ports.Ohms(passage.Port) ? left : double.NaN;
        }

        for (var update = 0; joint >= 0 && update < _updates; update++)
            if (network.Flows.AmperesFrom(below, update, joint) is not 0 and var amperes)
            {
                _volts.Take(network.Pieces.Joints[joint].Ohms * amperes);
                Add(update, passages);
            }
    }

    // One update in one block, as most are: ports that it leaves alone are passed over at once.
    private bool TookOneFlow()
    {
        if (_updates != 1 || network.Pieces.Sections.Count != 1)
            return false;
        var (entry, exit) = network.Flows.EndsIn(0, 0);
        var way = new BlockWay(ports.Network.Bridges, entry, exit);
        if (!way.MoveNext() || way.First != entry || way.Last != exit)
            return false;
        var passages = ports.Passages.Of(way.Current);
        if (passages.Length > 0)
            ports.Network.Blocks.Volts(way.Current, entry, exit, _volts);
        var siemens = (double)network.Inverse[0, 0];
        foreach (var (port, fromA, toB) in passages)
            if (_volts.Between(fromA, toB) is var volts && ports.Ohms(port) is var ohms && !(Math.Abs(siemens) * volts * volts <= ports.UnseenOhms(port)))
                _rows.Ohms[_rows.Of(port)] = ohms - (siemens * volts * volts) is var left && left >= LeastShare * (ohms + (Math.Abs(siemens) * volts * volts)) ? left : double.NaN;
        return true;
    }

    private void AddFlows()
    {
        for (var update = 0; update < _updates; update++)
            for (var section = 0; section < network.Pieces.Sections.Count; section++)
                if (network.Flows.EndsIn(update, section) is var (entry, exit) && entry != exit)
                    AddFlow(update, entry, exit);
    }

    private void AddFlow(int update, int entry, int exit)
    {
        if (IsLong(entry, exit))
        {
            AddIsland(update, entry, exit);
            return;
        }

        var way = new BlockWay(ports.Network.Bridges, entry, exit);
        // Bridges in a row are passed one after the other, on the way from either end.
        var (one, other) = (default(BridgeRow), default(BridgeRow));
        while (way.MoveNext())
        {
            var row = ports.Passages.RowOf(way.Current);
            if (row.Count == 0)
                continue;
            if (ports.Network.Bridges.SizeOf(way.Current) > 1)
            {
                ports.Network.Blocks.Volts(way.Current, way.First, way.Last, _volts);
                Add(update, ports.Passages.Of(row));
                continue;
            }

            var ohms = ports.Network.Blocks.BridgeOhms(way.Current);
            if (way.First != way.Current)
                ohms = -ohms;
            if (row == one.Row)
            {
                one.Ohms += ohms;
            }
            else if (row == other.Row)
            {
                other.Ohms += ohms;
            }
            else
            {
                Add(update, one);
                (one, other) = (other, new BridgeRow { Row = row, Ohms = ohms });
            }
        }

        Add(update, one);
        Add(update, other);
    }

    // Longer than it takes to look at every port of the island: a chain of many bridges each of which hundreds of ports pass.
    private bool IsLong(int entry, int exit)
    {
        var bridges = ports.Network.Bridges;
        if (bridges.DepthOf(entry) + bridges.DepthOf(exit) < LeastBlocks)
            return false;
        var island = ports.Network.Islands.Of(entry);
        var left = 2 * (ports.OnIsland(island).Length + ports.Network.Islands.Members(island).Length);
        var (way, last) = (new BlockWay(bridges, entry, exit), default((int, int)));
        while (left >= 0 && way.MoveNext())
            if (ports.Passages.RowOf(way.Current) is var row && row != last)
                (left, last) = (left - row.Count, row);
        return left < 0;
    }

    private void AddIsland(int update, int entry, int exit)
    {
        network.IslandVolts.Take(entry, exit);
        foreach (var port in ports.OnIsland(ports.Network.Islands.Of(entry)))
            if (network.IslandVolts.Between(ports.Nodes[ports.Pairs[port].A], ports.Nodes[ports.Pairs[port].B]) is not 0 and var volts)
                _rows.Add(port, update, volts);
    }

    private void Add(int update, BridgeRow bridges)
    {
        if (bridges.Row.Count == 0)
            return;
        _volts.Take(bridges.Ohms);
        Add(update, ports.Passages.Of(bridges.Row));
    }

    private void Add(int update, ReadOnlySpan<Passage> passages)
    {
        foreach (var (port, fromA, toB) in passages)
            _rows.Add(port, update, _volts.Between(fromA, toB));
    }

    // What is compiled ahead of time knows no vectors of the processor at hand, so that this is compiled at its first call, and at once as well as can be.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Correct()
    {
        TakeInverse();
        for (var first = 0; first < _rows.Count; first += PortRows.Lanes)
        {
            var (before, ohms) = (Vector256.LoadUnsafe(ref _rows.Before[first]), Vector256.LoadUnsafe(ref _rows.Ohms[first]));
            var (sum, magnitude) = SumOf(ref _rows.VoltsOf(first));
            var left = ohms - sum;
            var isTold = Vector256.GreaterThanOrEqual(left, LeastShare * (Vector256.Max(before, ohms) + magnitude));
            Vector256.ConditionalSelect(isTold, left, Vector256.Create(double.NaN)).StoreUnsafe(ref _rows.Ohms[first]);
        }
    }

    // What the updates take from four ports, and the sum of its terms without their signs.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector256<double> Sum, Vector256<double> Magnitude) SumOf(ref double atPort)
    {
        var (sum, magnitude) = (Vector256<double>.Zero, Vector256<double>.Zero);
        for (var row = 0; row < _updates; row++)
        {
            var volts = Vector256.LoadUnsafe(ref atPort, (nuint)(row * PortRows.Lanes));
            for (var column = 0; column <= row; column++)
            {
                var term = volts * Vector256.LoadUnsafe(ref atPort, (nuint)(column * PortRows.Lanes)) * _inverse[(row * _updates) + column];
                sum += term;
                magnitude += Vector256.Abs(term);
            }
        }

        return (sum, magnitude);
    }

    private void LeaveOutParted()
    {
        for (var row = 0; row < _rows.Count; row++)
            if (!pieces.IsOnePiece(_rows.PortOf(row)))
                _rows.Ohms[row] = double.NaN;
    }

    // What the way of a current passes of bridges that the same ports pass, below zero from the upper end to the lower.
    private struct BridgeRow
    {
        public (int Start, int Count) Row;
        public DoubleDouble Ohms;
    }

    // The matrix is symmetric: each entry beside its diagonal stands for two.
    private void TakeInverse()
    {
        if (_inverse.Length < _updates * _updates)
            _inverse = new double[_updates * _updates];
        for (var row = 0; row < _updates; row++)
            for (var column = 0; column <= row; column++)
                _inverse[(row * _updates) + column] = (column < row ? 2 : 1) * (double)network.Inverse[row, column];
    }
}
