namespace Proveout.Engine.Numerics;

/// <summary>Pairs of nodes of a network that are measured again and again.</summary>
internal sealed class Ports
{
    private const double UnseenShare = 1e-9;

    private readonly double[] _ohms;
    private double[] _unseenOhms;
    private readonly bool[] _isOneIsland;
    private Lazy<PortPassages> _passages;
    private Lazy<int[][]> _onIsland;

    /// <summary>Lists the ports of a network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="pairs">The nodes of each port.</param>
    /// <param name="likewise">The same ports of another network; where its graph is the same, their ways are taken from it.</param>
    /// <param name="unseenShares">For each port the share of its resistance below which a change is none; 1e-9 for all when null.</param>
    public Ports(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs, Ports? likewise = null, double[]? unseenShares = null)
    {
        Network = network;
        var placeOf = new Dictionary<int, int>();
        Pairs = new (int, int)[pairs.Count];
        _ohms = new double[pairs.Count];
        _unseenOhms = new double[pairs.Count];
        _isOneIsland = new bool[pairs.Count];
        for (var port = 0; port < Pairs.Length; port++)
        {
            var (a, b) = pairs[port];
            Pairs[port] = (Place(a), Place(b));
            _ohms[port] = network.Resistance(a, b);
            _unseenOhms[port] = _ohms[port] * (unseenShares?[port] ?? UnseenShare);
            _isOneIsland[port] = network.Islands.Of(a) == network.Islands.Of(b);
        }

        Nodes = [.. placeOf.OrderBy(pair => pair.Value).Select(pair => pair.Key)];
        var hasGraphOf = likewise is not null && network.HasGraphOf(likewise.Network);
        _passages = hasGraphOf ? likewise!._passages : new(() => new PortPassages(network, pairs));
        _onIsland = hasGraphOf ? likewise!._onIsland : new(() => ByIsland(IsOneIsland));
        Islands = Array.ConvertAll(Nodes, network.Islands.Of);

        int Place(int node) => placeOf.TryGetValue(node, out var place) ? place : placeOf[node] = placeOf.Count;
    }

    /// <summary>The network.</summary>
    public ResistorNetwork Network { get; }

    /// <summary>The nodes that the ports touch, each once.</summary>
    public int[] Nodes { get; }

    /// <summary>The island of each of the nodes.</summary>
    public int[] Islands { get; }

    /// <summary>The places of each port's two nodes in <see cref="Nodes"/>.</summary>
    public (int A, int B)[] Pairs { get; }

    /// <summary>The blocks on the way of each port.</summary>
    public PortPassages Passages => _passages.Value;

    /// <summary>The ports with both nodes on an island.</summary>
    public ReadOnlySpan<int> OnIsland(int island) => _onIsland.Value[island];

    /// <summary>Resistance of a port in ohms; infinite when its two nodes do not hang together.</summary>
    public double Ohms(int port) => _ohms[port];

    /// <summary>Ohms up to which a change of a port's resistance is none.</summary>
    public double UnseenOhms(int port) => _unseenOhms[port];

    /// <summary>The islands of a port's two nodes.</summary>
    public (int OfA, int OfB) IslandsOf(int port) => (Islands[Pairs[port].A], Islands[Pairs[port].B]);

    /// <summary>True when a port's two nodes hang together.</summary>
    public bool IsOneIsland(int port) => _isOneIsland[port];

    /// <summary>The same ports with other ohms up to which a change of each is none.</summary>
    /// <param name="unseenOhms">Those ohms.</param>
    /// <param name="isListed">Those ports within one island of which any change is looked for, where they are few; all when null.</param>
    public Ports Noticing(double[] unseenOhms, Func<int, bool>? isListed = null)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(unseenOhms.Length, Pairs.Length);
        var same = (Ports)MemberwiseClone();
        same._unseenOhms = unseenOhms;
        if (isListed is null)
            return same;
        same._passages = new(() => new PortPassages(Network, [.. Pairs.Select(pair => (Nodes[pair.A], Nodes[pair.B]))], isListed));
        same._onIsland = new(() => ByIsland(port => IsOneIsland(port) && isListed(port)));
        return same;
    }

    private int[][] ByIsland(Func<int, bool> isListed)
    {
        var onIsland = Enumerable.Range(0, Pairs.Length).Where(isListed).ToLookup(port => IslandsOf(port).OfA);
        return [.. Enumerable.Range(0, Network.Islands.Count).Select(island => onIsland[island].ToArray())];
    }
}
