namespace Proveout.Engine.Numerics;

/// <summary>A network of resistors between numbered nodes, factored once, that answers what stands between any two nodes. Safe for use from several threads.</summary>
/// <remarks>Every island is grounded at one node, its anchor. A current that leaves an island by the node where it should leaves nothing for the anchor, so the anchor changes no reading.</remarks>
internal sealed class ResistorNetwork
{
    private readonly Edge[] _edges;
    private readonly Islands _islands;
    private readonly (int Edge, int Other)[][] _steps;
    private readonly Lazy<Bridges> _bridges;
    private readonly Lazy<BlockTree> _blocks;
    private readonly Lazy<CutLabels> _cutLabels;

    /// <summary>Makes a network.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="edges">Its resistors, each with a conductance above zero.</param>
    /// <param name="likewise">Another network; where its resistors lie between the same nodes in the same order, what depends on that alone is taken from it.</param>
    public ResistorNetwork(int nodeCount, Edge[] edges, ResistorNetwork? likewise = null)
    {
        NodeCount = nodeCount;
        _edges = edges;
        _blocks = new Lazy<BlockTree>(() => new BlockTree(this));
        if (likewise is not null && HasGraphOf(likewise))
        {
            (_islands, _steps, _bridges, _cutLabels) = (likewise._islands, likewise._steps, likewise._bridges, likewise._cutLabels);
            return;
        }

        _islands = new Islands(nodeCount, edges.Select(edge => (edge.A, edge.B)));
        _steps = Steps(nodeCount, edges);
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

    /// <summary>Transfer resistances, each island grounded at its anchor.</summary>
    public BlockTree Blocks => _blocks.Value;

    /// <summary>Tells whether several resistors together part an island.</summary>
    public CutLabels CutLabels => _cutLabels.Value;

    /// <summary>The resistor with an index.</summary>
    public Edge EdgeOf(int index) => _edges[index];

    /// <summary>The resistors that end at a node, by index, each with its other node.</summary>
    public (int Edge, int Other)[] StepsFrom(int node) => _steps[node];

    /// <summary>The node where an island is grounded.</summary>
    public int AnchorOf(int island) => _islands.Members(island)[0];

    /// <summary>True when the resistors of two networks lie between the same nodes in the same order, whatever they are.</summary>
    public bool HasGraphOf(ResistorNetwork other)
    {
        if (NodeCount != other.NodeCount || EdgeCount != other.EdgeCount)
            return false;
        for (var edge = 0; edge < _edges.Length; edge++)
            if (_edges[edge].A != other._edges[edge].A || _edges[edge].B != other._edges[edge].B)
                return false;
        return true;
    }

    /// <summary>Resistance between two nodes in ohms; infinite when they do not hang together.</summary>
    public double Resistance(int a, int b) =>
        _islands.Of(a) == _islands.Of(b) ? Math.Max(0, (double)Blocks.Between(a, b)) : double.PositiveInfinity;

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
