namespace Proveout.Engine.Numerics;

/// <summary>Transfer resistances of a network as it is before a change, for many nodes at each pole. Reused from change to change by one thread.</summary>
/// <remarks>In small islands from columns, which are kept from change to change; in large ones node by node.</remarks>
internal sealed class ColumnTransfers(ResistorNetwork network)
{
    // Most changes have a handful of poles; the room of a rare one with a hundred is let go.
    private const int MostIdle = 24;

    private readonly List<(int Pole, int Island, FlowPotentials Flow)> _flows = [];
    private readonly Dictionary<int, Stack<FlowPotentials>> _idle = [];

    /// <summary>Lets the poles of the change before go.</summary>
    public void Clear()
    {
        foreach (var (_, island, flow) in _flows)
        {
            if (!_idle.TryGetValue(island, out var idle))
                _idle[island] = idle = new();
            if (idle.Count < MostIdle)
                idle.Push(flow);
        }

        _flows.Clear();
    }

    /// <summary>Potential in volts of a node for one ampere fed into a pole and taken from ground.</summary>
    /// <param name="pole">A node that many are asked for.</param>
    /// <param name="node">A node of the same island.</param>
    public DoubleDouble Between(int pole, int node) => network.KeepsColumnsOf(network.Islands.Of(pole))
        ? network.Column(pole)[network.IndexInIsland(node)]
        : FlowOf(pole)[network.IndexInIsland(node)];

    /// <summary>The transfer resistances of a pole to each node of its island, by their places there; null where they are found node by node.</summary>
    public DoubleDouble[]? ColumnOf(int pole) => network.KeepsColumnsOf(network.Islands.Of(pole)) ? network.Column(pole) : null;

    private FlowPotentials FlowOf(int pole)
    {
        foreach (var (known, _, ready) in _flows)
            if (known == pole)
                return ready;
        var island = network.Islands.Of(pole);
        var flow = _idle.TryGetValue(island, out var idle) && idle.TryPop(out var rested) ? rested : new FlowPotentials(network.FactorOf(island));
        flow.Start(network.IndexInIsland(pole));
        _flows.Add((pole, island, flow));
        return flow;
    }
}
