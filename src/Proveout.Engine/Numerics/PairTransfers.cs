namespace Proveout.Engine.Numerics;

/// <summary>Transfer resistances between any two nodes of a network without a stored column: each is a sum along the elimination tree.</summary>
/// <remarks>
/// With the conductance matrix factored as L D Lᵀ, the transfer resistance of u and v is (L⁻¹e_u)ᵀ D⁻¹ (L⁻¹e_v). Both vectors are zero but on
/// the path from their node to the root of the elimination tree (Liu, SIAM Journal on Matrix Analysis 11 (1990) 134-172), so the sum runs
/// over what the two paths share; every term of it is positive, and nothing cancels. Wiring is nearly a tree, so the paths are short, and
/// all of them together take a small part of the memory that the columns would. Safe for use from several threads.
/// </remarks>
internal sealed class PairTransfers
{
    private readonly ResistorNetwork _network;
    private readonly int[] _parent;
    private readonly int[] _depth;
    private readonly int[][] _later;
    private readonly DoubleDouble[][] _multipliers;
    private readonly DoubleDouble[] _reciprocals;
    private readonly DoubleDouble[]?[] _forward;

    /// <summary>Factors a network, every island tied to ground at its anchor.</summary>
    public PairTransfers(ResistorNetwork network)
    {
        _network = network;
        var edges = Enumerable.Range(0, network.EdgeCount).Select(network.EdgeOf).ToArray();
        (var order, _later) = EliminationOrder.MinimumDegree(network.NodeCount, edges.Select(edge => (edge.A, edge.B)));
        _parent = new int[network.NodeCount];
        _depth = new int[network.NodeCount];
        Tree(order);
        _multipliers = Array.ConvertAll(_later, later => new DoubleDouble[later.Length]);
        _reciprocals = new DoubleDouble[network.NodeCount];
        _forward = new DoubleDouble[]?[network.NodeCount];
        Factor(order, edges);
    }

    /// <summary>Potential of node <paramref name="v"/> for one ampere fed into node <paramref name="u"/> and taken from ground.</summary>
    public DoubleDouble Of(int u, int v)
    {
        if (_network.Islands.Of(u) != _network.Islands.Of(v))
            return DoubleDouble.Zero;
        var (ofU, ofV) = (Forward(u), Forward(v));
        while (u != v)
            if (_depth[u] >= _depth[v])
                u = _parent[u];
            else
                v = _parent[v];
        var sum = DoubleDouble.Zero;
        for (var node = u; node >= 0; node = _parent[node])
            sum += ofU[_depth[node]] * ofV[_depth[node]] * _reciprocals[node];
        return sum;
    }

    // What one ampere into the node sends to each node on its path, by depth of that node, while the nodes below are eliminated.
    private DoubleDouble[] Forward(int node)
    {
        if (_forward[node] is { } ready)
            return ready;
        var values = new DoubleDouble[_depth[node] + 1];
        values[^1] = 1;
        for (var at = node; at >= 0; at = _parent[at])
            for (var index = 0; index < _later[at].Length; index++)
                values[_depth[_later[at][index]]] += _multipliers[at][index] * values[_depth[at]];
        return Interlocked.CompareExchange(ref _forward[node], values, null) ?? values;
    }

    private void Tree(int[] order)
    {
        var position = new int[order.Length];
        for (var index = 0; index < order.Length; index++)
            position[order[index]] = index;
        for (var index = order.Length - 1; index >= 0; index--)
        {
            var node = order[index];
            _parent[node] = _later[node].Length == 0 ? -1 : _later[node].MinBy(later => position[later]);
            _depth[node] = _parent[node] < 0 ? 0 : _depth[_parent[node]] + 1;
        }
    }

    // The multipliers hold minus the off-diagonal entries first, that is conductances; both stay positive throughout the elimination. Of two
    // nodes that an entry joins the one deeper in the tree is eliminated first.
    private void Factor(int[] order, Edge[] edges)
    {
        var pivots = new DoubleDouble[order.Length];
        for (var island = 0; island < _network.Islands.Count; island++)
            pivots[_network.AnchorOf(island)] = ResistorNetwork.AnchorConductance;
        foreach (var edge in edges)
        {
            pivots[edge.A] += edge.Conductance;
            pivots[edge.B] += edge.Conductance;
            Add(edge.A, edge.B, edge.Conductance);
        }

        foreach (var node in order)
            Eliminate(node, pivots);
    }

    private void Eliminate(int node, DoubleDouble[] pivots)
    {
        var later = _later[node];
        var multipliers = _multipliers[node];
        _reciprocals[node] = (DoubleDouble)1 / pivots[node];
        for (var one = 0; one < later.Length; one++)
        {
            var share = multipliers[one] * _reciprocals[node];
            pivots[later[one]] -= share * multipliers[one];
            for (var two = one + 1; two < later.Length; two++)
                Add(later[one], later[two], share * multipliers[two]);
        }

        for (var index = 0; index < later.Length; index++)
            multipliers[index] *= _reciprocals[node];
    }

    private void Add(int a, int b, DoubleDouble conductance)
    {
        var (earlier, later) = _depth[a] > _depth[b] ? (a, b) : (b, a);
        _multipliers[earlier][Array.IndexOf(_later[earlier], later)] += conductance;
    }
}
