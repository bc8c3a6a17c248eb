namespace Proveout.Engine.Numerics;

/// <summary>The ports of a network with a few of its resistors changed: many ports for each change. Reused from change to change by one thread.</summary>
internal sealed class ChangedPorts
{
    private readonly Ports _ports;
    private readonly ChangedNetwork _network;
    private readonly PortPieces _pieces;
    private readonly AlteredPorts _altered;

    /// <summary>Prepares to change the network of some ports.</summary>
    /// <param name="ports">The ports.</param>
    /// <param name="likewise">Other ports of the same network whose room these may share; each is asked only until the other is changed.</param>
    public ChangedPorts(Ports ports, ChangedPorts? likewise = null)
    {
        _ports = ports;
        _network = likewise?._network ?? new ChangedNetwork(ports.Network);
        _pieces = new PortPieces(ports, _network);
        _altered = new AlteredPorts(ports, _network, _pieces);
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
        _pieces.Take();
        _altered.Take();
    }

    /// <summary>Sets the bits of the ports within one island that the change alters.</summary>
    public void AddTouched(Span<ulong> mask) => _altered.AddTo(mask);

    /// <summary>Numbers of the pieces that a port's nodes are now in.</summary>
    public (int OfA, int OfB) PiecesOf(int port) => (_pieces.NumberAt(_ports.Pairs[port].A), _pieces.NumberAt(_ports.Pairs[port].B));

    /// <summary>True when the change touches the island of a node of a port.</summary>
    public bool Touches(int port) => (_pieces.At(_ports.Pairs[port].A) | _pieces.At(_ports.Pairs[port].B)) != 0;

    /// <summary>True when the change may alter a port; false when it surely leaves it as it was, to <see cref="Ports.UnseenOhms"/>.</summary>
    /// <param name="port">Number of the port.</param>
    /// <param name="ohms">Resistance after the change; infinite when the port's nodes do not hang together.</param>
    public bool Alters(int port, out double ohms)
    {
        ohms = double.PositiveInfinity;
        var isAltered = _ports.IsOneIsland(port) ? _altered.Alters(port, out ohms) : _pieces.IsOnePiece(port);
        if (isAltered && !double.IsFinite(ohms))
            ohms = Ohms(port);
        return isAltered;
    }

    /// <summary>Resistance of a port in ohms after the change; infinite when its nodes do not hang together.</summary>
    public double Ohms(int port)
    {
        if (_pieces.IsOnePiece(port))
            return _network.OhmsWithin(_ports.Nodes[_ports.Pairs[port].A], _ports.Nodes[_ports.Pairs[port].B]);
        return Touches(port) ? double.PositiveInfinity : _ports.Ohms(port);
    }
}
