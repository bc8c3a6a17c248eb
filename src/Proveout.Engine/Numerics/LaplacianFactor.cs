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
    private readonly DoubleDouble[] _reciprocals;
    private readonly int[] _position;
    private readonly int[] _parent;
    private readonly int[] _depth;
    private readonly int _height;
    private readonly DoubleDouble[]?[] _forward;
    private readonly Lazy<DoubleDouble[]> _selves;

    /// <summary>Factors a network.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="edges">Edges with their conductance in siemens, above zero.</param>
    /// <param name="groundConductance">Conductance from each node to ground in siemens; above zero at one node of every island, else zero.</param>
    public LaplacianFactor(int nodeCount, IReadOnlyList<Edge> edges, DoubleDouble[] groundConductance)
    {
        (_order, _later) = EliminationOrder.MinimumDegree(nodeCount, edges.Select(edge => (edge.A, edge.B)));
        _position = new int[nodeCount];
        for (var position = 0; position < nodeCount; position++)
            _position[_order[position]] = position;
        (_reciprocals, _multipliers) = (new DoubleDouble[nodeCount], new DoubleDouble[nodeCount][]);
        Assemble(edges);
        Eliminate([.. groundConductance]);
        (_parent, _depth, _forward) = (new int[nodeCount], new int[nodeCount], new DoubleDouble[]?[nodeCount]);
        for (var position = nodeCount - 1; position >= 0; position--)
        {
            var node = _order[position];
            _parent[node] = _later[node].Length == 0 ? -1 : _later[node].MinBy(later => _position[later]);
            _depth[node] = _parent[node] < 0 ? 0 : _depth[_parent[node]] + 1;
        }

        _height = _depth.Max() + 1;
        _selves = new(SolveSelves);
    }

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
        var room = ArrayPool<DoubleDouble>.Shared.Rent(2 * _height);
        var ofOne = room.AsSpan(0, _height);
        var ofOther = room.AsSpan(_height, _height);
        SolveForward(one, ofOne);
        SolveForward(other, ofOther);
        var sum = SumOfShared(one, other, ofOne, ofOther);
        ArrayPool<DoubleDouble>.Shared.Return(room);
        return sum;
    }

    // What one ampere into a node sends to each node on its path to the root while the nodes below are eliminated, by depth on the path.
    private void SolveForward(int node, Span<DoubleDouble> values)
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
        var (selves, values) = (new DoubleDouble[_order.Length], new DoubleDouble[_height]);
        for (var node = 0; node < selves.Length; node++)
        {
            SolveForward(node, values);
            for (var at = node; at >= 0; at = _parent[at])
                selves[node] += values[_depth[at]] * values[_depth[at]] * _reciprocals[at];
        }

        return selves;
    }

    /// <summary>Potentials of all nodes for one ampere fed into a node and taken from ground.</summary>
    /// <param name="source">The node.</param>
    /// <param name="potential">Takes the potentials of all nodes, in volts.</param>
    public void Solve(int source, Span<DoubleDouble> potential)
    {
        potential.Clear();
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
    }

    // The multipliers hold minus the off-diagonal entries first, that is conductances.
    private void Assemble(IReadOnlyList<Edge> edges)
    {
        for (var node = 0; node < _order.Length; node++)
            _multipliers[node] = new DoubleDouble[_later[node].Length];
        foreach (var edge in edges)
            Add(edge.A, edge.B, edge.Conductance);
    }

    // A node that goes leaves a star turned into a mesh. Its pivot is the sum of what it is joined to, so nothing is ever subtracted and every value is right in all its
    // digits, over however many decades conductances lie (Grassmann, Taksar and Heyman, Operations Research 33 (1985) 1107-1116).
    private void Eliminate(DoubleDouble[] toGround)
    {
        foreach (var node in _order)
        {
            var later = _later[node];
            var multipliers = _multipliers[node];
            var pivot = toGround[node];
            foreach (var conductance in multipliers)
                pivot += conductance;
            _reciprocals[node] = (DoubleDouble)1 / pivot;
            for (var one = 0; one < later.Length; one++)
            {
                var share = multipliers[one] / pivot;
                toGround[later[one]] += share * toGround[node];
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
