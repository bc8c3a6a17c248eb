namespace Proveout.Engine.Numerics;

/// <summary>The pieces of a changed network that the nodes of ports are in, each found once for a change. Reused from change to change by one thread.</summary>
internal sealed class PortPieces(Ports ports, ChangedNetwork network)
{
    private readonly (int Turn, int Piece)[] _found = new (int, int)[ports.Nodes.Length];
    private int _turn;

    /// <summary>Takes the change that the network has now.</summary>
    public void Take() => _turn++;

    /// <summary>Number of the piece that the node at a place is in, from 1; 0 when the change does not touch its island.</summary>
    public int At(int place)
    {
        ref var found = ref _found[place];
        if (found.Turn != _turn)
            found = (_turn, network.Pieces.Of(ports.Nodes[place]));
        return found.Piece;
    }

    /// <summary>The same numbered on after the islands; while all pieces are as before, they keep the numbers of their islands.</summary>
    public int NumberAt(int place) => !network.HasPiecesAsBefore && At(place) is > 0 and var piece ? ports.Network.Islands.Count + piece - 1 : ports.Islands[place];

    /// <summary>True when both nodes of a port are in one piece of the islands that the change touches.</summary>
    public bool IsOnePiece(int port) => At(ports.Pairs[port].A) is > 0 and var piece && piece == At(ports.Pairs[port].B);
}
