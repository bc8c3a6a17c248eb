using System.Buffers;

namespace Proveout.Engine.Numerics;

/// <summary>Transfer resistances of a block of a network with more than two nodes, which is grounded at its top. Safe for use from several threads.</summary>
internal sealed class LoopBlock
{
    // Of 16 bytes each. Wiring has blocks of some hundreds of nodes; columns of one with thousands are solved whenever they are asked for.
    private const long MostKeptValues = 1 << 22;

    private readonly LaplacianFactor _factor;
    private readonly int _size;
    private readonly BlockColumn?[]? _columns;

    /// <summary>Factors a block.</summary>
    /// <param name="edges">Its resistors beside those that end at its top, by the places of its nodes less one.</param>
    /// <param name="toTop">Conductance in siemens between each node and the top, in the order of the places.</param>
    public LoopBlock(IReadOnlyList<Edge> edges, DoubleDouble[] toTop)
    {
        (_size, _factor) = (toTop.Length, new LaplacianFactor(toTop.Length, edges, toTop));
        _columns = (long)toTop.Length * toTop.Length <= MostKeptValues ? new BlockColumn?[toTop.Length + 1] : null;
    }

    /// <summary>Resistance in ohms between the node at a place and the top.</summary>
    public DoubleDouble Self(int place) => _factor.Self(place - 1);

    /// <summary>Volts of one node for one ampere fed into another and taken from the top.</summary>
    public DoubleDouble Transfer(int one, int other) =>
        _columns?[one] is { } ofOne ? ofOne[other] : _columns?[other] is { } ofOther ? ofOther[one] : _factor.Transfer(one - 1, other - 1);

    /// <summary>The same for all nodes, by their places.</summary>
    public BlockColumn Column(int place)
    {
        if (_columns is null)
            return Solve(place);
        return _columns[place] ?? Interlocked.CompareExchange(ref _columns[place], Solve(place), null) ?? _columns[place]!;
    }

    private BlockColumn Solve(int place)
    {
        var room = ArrayPool<DoubleDouble>.Shared.Rent(_size);
        var volts = room.AsSpan(0, _size);
        _factor.Solve(place - 1, volts);
        var column = new BlockColumn(volts);
        ArrayPool<DoubleDouble>.Shared.Return(room);
        return column;
    }
}
