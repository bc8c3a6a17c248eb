using System.Buffers;

namespace Proveout.Engine.Numerics;

/// <summary>The factored nodal conductance matrix of a network of resistors, every island of it tied to a common ground.</summary>
/// <remarks>L D Lᵀ in double-double on a minimum-degree order; George and Liu, Computer Solution of Large Sparse Positive Definite Systems (1981).</remarks>
internal sealed class LaplacianFactor
{
    private const int MostKept = 1024;

    private readonly int[] _order;
    private readonly int[][] _later;
    private readonly DoubleDouble[][] _multipliers;
    private readonly DoubleDouble[] _pivots;
    private readonly DoubleDouble[] _reciprocals;
    private readonly int[] _position;
    private readonly int[] _parent;
    private readonly int[] _depth;
    private readonly DoubleDouble[]?[] _forward;
    private readonly Lazy<DoubleDouble[]> _selves;

    /// <summary>Factors a network.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="edges">Edges with their conductance in siemens, above zero.</param>
    /// <param name="groundConductance">Conductance from each node to ground in siemens; above zero at one node of every island, else zero.</param>
    public LaplacianFactor(int nodeCount, IReadOnlyList<Edge> edges, double[] groundConductance)
    {
        (_order, _later) = EliminationOrder.MinimumDegree(nodeCount, edges.Select(edge => (edge.A, edge.B)));
        _position = new int[nodeCount];
        for (var position = 0; position < nodeCount; position++)
            _position[_order[position]] = position;
        _pivots = new DoubleDouble[nodeCount];
        _multipliers = new DoubleDouble[nodeCount][];
        Assemble(edges, groundConductance);
        Eliminate();
        _reciprocals = Array.ConvertAll(_pivots, pivot => (DoubleDouble)1 / pivot);
        (_parent, _depth, _forward) = (new int[nodeCount], new int[nodeCount], new DoubleDouble[]?[nodeCount]);
        for (var position = nodeCount - 1; position >= 0; position--)
        {
            var node = _order[position];
            _parent[node] = _later[node].Length == 0 ? -1 : _later[node].MinBy(later => _position[later]);
            _depth[node] = _parent[node] < 0 ? 0 : _depth[_parent[node]] + 1;
        }

        Height = _depth.Max() + 1;
        _selves = new(SolveSelves);
    }

    /// <summary>Number of nodes.</summary>
    public int NodeCount => _order.Length;

    /// <summary>Number of nodes on the longest path to a root of the elimination tree.</summary>
    public int Height { get; }

    /// <summary>The node above a node in the elimination tree; -1 for a root.</summary>
    public int ParentOf(int node) => _parent[node];

    /// <summary>Number of nodes above a node in the elimination tree.</summary>
    public int DepthOf(int node) => _depth[node];

    /// <summary>One over the pivot of a node.</summary>
    public DoubleDouble ReciprocalOf(int node) => _reciprocals[node];

    /// <summary>The nodes that a node is joined to when it is eliminated, all above it in the elimination tree, with its multipliers.</summary>
    public (int[] Nodes, DoubleDouble[] Multipliers) LaterThan(int node) => (_later[node], _multipliers[node]);

    /// <summary>Potential of a node for one ampere fed into it and taken from ground.</summary>
    public DoubleDouble Self(int node) => _selves.Value[node];

    /// <summary>Potential of one node for one ampere fed into another and taken from ground, without a column.</summary>
    /// <remarks>
    /// It is (L⁻¹e_u)ᵀ D⁻¹ (L⁻¹e_v). Both vectors are zero but on the path from their node to the root of the elimination tree (Liu, SIAM Journal on
    /// Matrix Analysis 11 (1990) 134-172), so the sum runs over what the two paths share; every term of it is positive, and nothing cancels. Wiring
    /// is nearly a tree, so the paths are short.
    /// </remarks>
    public DoubleDouble Transfer(int one, int other)
    {
        if (_order.Length <= MostKept)
            return SumOfShared(one, other, Forward(one), Forward(other));
        var room = ArrayPool<DoubleDouble>.Shared.Rent(2 * Height);
        var ofOne = room.AsSpan(0, Height);
        var ofOther = room.AsSpan(Height, Height);
        SolveForward(one, ofOne);
        SolveForward(other, ofOther);
        var sum = SumOfShared(one, other, ofOne, ofOther);
        ArrayPool<DoubleDouble>.Shared.Return(room);
        return sum;
    }

    /// <summary>Finds what one ampere into a node sends to each node on its path to the root while the nodes below are eliminated.</summary>
    /// <param name="node">The node.</param>
    /// <param name="values">Takes the values, by depth of the nodes on the path.</param>
    public void SolveForward(int node, Span<DoubleDouble> values)
    {
        values[..(_depth[node] + 1)].Clear();
        values[_depth[node]] = 1;
        for (var at = node; at >= 0; at = _parent[at])
            for (var index = 0; index < _later[at].Length; index++)
                values[_depth[_later[at][index]]] += _multipliers[at][index] * values[_depth[at]];
    }

    private DoubleDouble SumOfShared(int one, int other, ReadOnlySpan<DoubleDouble> ofOne, ReadOnlySpan<DoubleDouble> ofOther)
    {
        while (one != other)
            if (_depth[one] >= _depth[other])
                one = _parent[one];
            else
                other = _parent[other];
        var sum = DoubleDouble.Zero;
        for (var node = one; node >= 0; node = _parent[node])
            sum += ofOne[_depth[node]] * ofOther[_depth[node]] * _reciprocals[node];
        return sum;
    }

    // Kept in small networks alone: in large ones the paths grow long, and all together would take the square of the size.
    private DoubleDouble[] Forward(int node)
    {
        if (_forward[node] is { } ready)
            return ready;
        var values = new DoubleDouble[_depth[node] + 1];
        SolveForward(node, values);
        return Interlocked.CompareExchange(ref _forward[node], values, null) ?? values;
    }

    private DoubleDouble[] SolveSelves()
    {
        var (selves, values) = (new DoubleDouble[_order.Length], new DoubleDouble[Height]);
        for (var node = 0; node < selves.Length; node++)
        {
            SolveForward(node, values);
            for (var at = node; at >= 0; at = _parent[at])
                selves[node] += values[_depth[at]] * values[_depth[at]] * _reciprocals[at];
        }

        return selves;
    }

    /// <summary>Potentials of all nodes, in volts, for one ampere fed into a node and taken from ground.</summary>
    public DoubleDouble[] Column(int source)
    {
        var potential = new DoubleDouble[_order.Length];
        potential[source] = 1;
        for (var position = _position[source]; position < _order.Length; position++)
        {
            var node = _order[position];
            var value = potential[node];
            if (value.High == 0)
                continue;
            var later = _later[node];
            var multipliers = _multipliers[node];
            for (var index = 0; index < later.Length; index++)
                potential[later[index]] += multipliers[index] * value;
        }

        for (var position = _order.Length - 1; position >= 0; position--)
        {
            var node = _order[position];
            var value = potential[node].High == 0 ? DoubleDouble.Zero : potential[node] * _reciprocals[node];
            var later = _later[node];
            var multipliers = _multipliers[node];
            for (var index = 0; index < later.Length; index++)
                value += multipliers[index] * potential[later[index]];
            potential[node] = value;
        }

        return potential;
    }

    // The multipliers hold minus the off-diagonal entries first, that is conductances; both stay positive throughout the elimination.
    private void Assemble(IReadOnlyList<Edge> edges, double[] groundConductance)
    {
        for (var node = 0; node < _order.Length; node++)
        {
            _multipliers[node] = new DoubleDouble[_later[node].Length];
            _pivots[node] = groundConductance[node];
        }

        foreach (var edge in edges)
        {
            _pivots[edge.A] += edge.Conductance;
            _pivots[edge.B] += edge.Conductance;
            Add(edge.A, edge.B, edge.Conductance);
        }
    }

    private void Eliminate()
    {
        foreach (var node in _order)
        {
            var later = _later[node];
            var multipliers = _multipliers[node];
            var pivot = _pivots[node];
            for (var one = 0; one < later.Length; one++)
            {
                var share = multipliers[one] / pivot;
                _pivots[later[one]] -= share * multipliers[one];
                for (var two = one + 1; two < later.Length; two++)
                    Add(later[one], later[two], share * multipliers[two]);
            }

            for (var index = 0; index < later.Length; index++)
                multipliers[index] /= pivot;
        }
    }

    private void Add(int a, int b, DoubleDouble conductance)
    {
        var (earlier, later) = _position[a] < _position[b] ? (a, b) : (b, a);
        _multipliers[earlier][Array.IndexOf(_later[earlier], later)] += conductance;
    }
}
