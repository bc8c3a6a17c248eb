using System.Collections.Concurrent;

namespace Proveout.Engine.Numerics;

/// <summary>A network of resistors between numbered nodes, factored once, that answers what stands between any two nodes.</summary>
/// <remarks>
/// Every island is tied to a common ground at one node through one siemens (its anchor). A current that leaves an island by the node where
/// it should leaves nothing for the anchor, so the anchor changes no reading; it only makes the matrix regular. Columns are solved when
/// asked for, and those asked for last are kept. Safe for use from several threads.
/// </remarks>
internal sealed class ResistorNetwork
{
    private const double AnchorConductance = 1;

    // Of 16 bytes each: the columns of a large network would take the square of its size.
    private const long MostKeptValues = 1 << 21;

    private const int MostMembers = 1024;

    private readonly Edge[] _edges;
    private readonly Islands _islands;
    private readonly int[] _indexInIsland;
    private readonly (int Edge, int Other)[][] _steps;
    private readonly Lazy<LaplacianFactor>[] _factors;
    private readonly DoubleDouble[]?[] _columns;
    private readonly ConcurrentQueue<int> _kept = new();
    private long _keptValues;
    private readonly Lazy<Bridges> _bridges;
    private readonly Lazy<CutLabels> _cutLabels;

    /// <summary>Makes a network.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="edges">Its resistors, each with a conductance above zero.</param>
    public ResistorNetwork(int nodeCount, Edge[] edges)
    {
        NodeCount = nodeCount;
        _edges = edges;
        _islands = new Islands(nodeCount, edges.Select(edge => (edge.A, edge.B)));
        _indexInIsland = new int[nodeCount];
        for (var island = 0; island < _islands.Count; island++)
            for (var index = 0; index < _islands.Members(island).Length; index++)
                _indexInIsland[_islands.Members(island)[index]] = index;
        _steps = Steps(nodeCount, edges);
        _factors = [.. Enumerable.Range(0, _islands.Count).Select(island => new Lazy<LaplacianFactor>(() => Factor(island)))];
        _columns = new DoubleDouble[]?[nodeCount];
        _bridges = new Lazy<Bridges>(() => new Bridges(this));
        _cutLabels = new Lazy<CutLabels>(() => new CutLabels(this));
    }

    /// <summary>Number of nodes.</summary>
    public int NodeCount { get; }

    /// <summary>Which nodes hang together.</summary>
    public Islands Islands => _islands;

    /// <summary>Number of resistors.</summary>
    public int EdgeCount => _edges.Length;

    /// <summary>The resistors whose removal parts an island.</summary>
    public Bridges Bridges => _bridges.Value;

    /// <summary>Tells whether several resistors together part an island.</summary>
    public CutLabels CutLabels => _cutLabels.Value;

    /// <summary>The resistor with an index.</summary>
    public Edge EdgeOf(int index) => _edges[index];

    /// <summary>The resistors that end at a node, by index, each with its other node.</summary>
    public (int Edge, int Other)[] StepsFrom(int node) => _steps[node];

    /// <summary>The node where an island is tied to ground.</summary>
    public int AnchorOf(int island) => _islands.Members(island)[0];

    /// <summary>Place of a node among the members of its island.</summary>
    public int IndexInIsland(int node) => _indexInIsland[node];

    /// <summary>Resistance between two nodes in ohms; infinite when they do not hang together.</summary>
    public double Resistance(int a, int b) =>
        _islands.Of(a) == _islands.Of(b) ? Math.Max(0, (double)(Self(a) + Self(b) - Transfer(a, b) - Transfer(a, b))) : double.PositiveInfinity;

    /// <summary>Resistance in ohms between a node and any other, by one column: for many others it costs less than asking one by one.</summary>
    public Func<int, double> ResistanceFrom(int node)
    {
        var (column, self, island) = (Column(node), Self(node), _islands.Of(node));
        return other => _islands.Of(other) == island
            ? Math.Max(0, (double)(self + Self(other) - column[_indexInIsland[other]] - column[_indexInIsland[other]]))
            : double.PositiveInfinity;
    }

    /// <summary>True when the columns of an island are few and short enough to be kept, so that a column costs less than potentials found one by one.</summary>
    public bool KeepsColumnsOf(int island) => _islands.Members(island).Length <= MostMembers;

    /// <summary>The factor of an island, by the places of its members.</summary>
    public LaplacianFactor FactorOf(int island) => _factors[island].Value;

    /// <summary>Potential of a node for one ampere fed into it and taken from ground.</summary>
    public DoubleDouble Self(int node) => _factors[_islands.Of(node)].Value.Self(_indexInIsland[node]);

    /// <summary>Potential of node <paramref name="b"/> for one ampere fed into node <paramref name="a"/> and taken from ground.</summary>
    public DoubleDouble Transfer(int a, int b) =>
        _islands.Of(a) == _islands.Of(b) ? _factors[_islands.Of(a)].Value.Transfer(_indexInIsland[a], _indexInIsland[b]) : DoubleDouble.Zero;

    /// <summary>Potentials of the nodes of an island, in the order of its members, for one ampere fed into one of them.</summary>
    public DoubleDouble[] Column(int node)
    {
        if (_columns[node] is { } ready)
            return ready;
        var solved = _factors[_islands.Of(node)].Value.Column(_indexInIsland[node]);
        if (Interlocked.CompareExchange(ref _columns[node], solved, null) is { } other)
            return other;
        _kept.Enqueue(node);
        var values = Interlocked.Add(ref _keptValues, solved.Length);
        while (values > MostKeptValues && _kept.TryDequeue(out var oldest))
        {
            values = Interlocked.Add(ref _keptValues, -_islands.Members(_islands.Of(oldest)).Length);
            _columns[oldest] = null;
        }

        return solved;
    }

    private LaplacianFactor Factor(int island)
    {
        var members = _islands.Members(island);
        var local = members
            .SelectMany(node => _steps[node].Where(step => _edges[step.Edge].A == node).Select(step => step.Edge))
            .Select(index => new Edge(_indexInIsland[_edges[index].A], _indexInIsland[_edges[index].B], _edges[index].Conductance))
            .ToArray();
        var ground = new double[members.Length];
        ground[0] = AnchorConductance;
        return new LaplacianFactor(members.Length, local, ground);
    }

    private static (int Edge, int Other)[][] Steps(int nodeCount, Edge[] edges)
    {
        var counts = new int[nodeCount];
        foreach (var edge in edges)
        {
            counts[edge.A]++;
            counts[edge.B]++;
        }

        var steps = Array.ConvertAll(counts, count => new (int, int)[count]);
        for (var index = edges.Length - 1; index >= 0; index--)
        {
            var (a, b) = (edges[index].A, edges[index].B);
            steps[b][--counts[b]] = (index, a);
            steps[a][--counts[a]] = (index, b);
        }

        return steps;
    }
}
