namespace Proveout.Engine.Numerics;

/// <summary>The ports of a network with a few of its resistors changed: many ports for each change. Reused from change to change by one thread.</summary>
internal sealed class ChangedPorts
{
    private readonly Ports _ports;
    private readonly ChangedNetwork _network;
    private readonly PortTransfers _transfers;

    /// <summary>Prepares to change the network of some ports.</summary>
    /// <param name="ports">The ports.</param>
    /// <param name="likewise">Other ports of the same network whose room these may share; each is asked only until the other is changed.</param>
    public ChangedPorts(Ports ports, ChangedPorts? likewise = null)
    {
        _ports = ports;
        _network = likewise?._network ?? new ChangedNetwork(ports.Network);
        _transfers = new PortTransfers(ports, _network);
    }

    /// <summary>True when the change neither parts nor joins pieces.</summary>
    public bool HasPiecesAsBefore => _network.HasPiecesAsBefore;

    /// <summary>The pieces of the islands that the change touches.</summary>
    public ChangedPieces Pieces => _network.Pieces;

    /// <summary>Islands of the network as it was that the change touches.</summary>
    public List<int> TouchedIslands => _network.Pieces.TouchedIslands;

    /// <summary>Applies changes to the network as it was, in place of those applied before.</summary>
    /// <param name="changes">What changes; each resistor at most once; at least one change.</param>
    public void Apply(List<EdgeChange> changes)
    {
        _network.Apply(changes);
        _transfers.Take();
    }

    /// <summary>Sets the bits of the ports within one island that the change may alter.</summary>
    public void AddTouched(PortPaths paths, Span<ulong> mask) => paths.Add(_network.Pieces, _network.Flows, mask);

    /// <summary>Numbers of the pieces that a port's nodes are now in.</summary>
    public (int OfA, int OfB) PiecesOf(int port)
    {
        var (a, b) = _ports.Pairs[port];
        return (PieceOf(a), PieceOf(b));
    }

    /// <summary>True when the change touches the island of a node of a port.</summary>
    public bool Touches(int port) => (_transfers.PieceAt(_ports.Pairs[port].A) | _transfers.PieceAt(_ports.Pairs[port].B)) != 0;

    /// <summary>True when the change may alter a port; false when it surely leaves it as it was, to ten digits.</summary>
    /// <param name="port">Number of the port.</param>
    /// <param name="ohms">Resistance after the change; infinite when the port's nodes do not hang together.</param>
    public bool Alters(int port, out double ohms)
    {
        ohms = double.PositiveInfinity;
        var (a, b) = _ports.Pairs[port];
        var piece = _transfers.PieceAt(a);
        if (piece != _transfers.PieceAt(b))
            return _ports.IsOneIsland(port);
        if (piece == 0)
            return false;
        if (_transfers.AreInOneSection(a, b))
        {
            if (_transfers.IsUntouched(a, b, _ports.RootOfOhms(port)))
                return false;
            ohms = _ports.Ohms(port);
        }
        else
        {
            ohms = (double)_network.Flows.Ohms(_ports.Nodes[a], _ports.Nodes[b]);
        }

        ohms = _transfers.Correct(a, b, ohms);
        if (double.IsNaN(ohms))
            ohms = _network.Ohms(_ports.Nodes[a], _ports.Nodes[b]);
        return true;
    }

    // While all pieces are as before, they keep the numbers of their islands.
    private int PieceOf(int place) => _transfers.PieceAt(place) is > 0 and var piece && !HasPiecesAsBefore ? _ports.Network.Islands.Count + piece - 1 : _ports.Islands[place];
}
