using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>For each update of a network, the potentials while one ampere enters at its one end and leaves at the other. Reused from change to change by one thread.</summary>
/// <remarks>In small islands from columns, which are kept from change to change; in large ones node by node.</remarks>
internal sealed class UpdatePotentials(ResistorNetwork network)
{
    // Most changes have a handful of updates; the room of a rare one with a hundred is let go.
    private const int MostIdle = 12;

    private readonly List<Potential> _potentials = [];
    private readonly Dictionary<int, Stack<FlowPotentials>> _idle = [];

    /// <summary>Number of updates.</summary>
    public int Count => _potentials.Count;

    /// <summary>Takes the updates of a change in place of those before.</summary>
    public void Take(ReadOnlySpan<NetworkUpdate> updates)
    {
        foreach (var potential in _potentials)
        {
            GiveBack(potential.A);
            GiveBack(potential.B);
        }

        _potentials.Clear();
        foreach (var update in updates)
            _potentials.Add(PotentialOf(update));
    }

    /// <summary>Gives the potentials of a node in volts, one for each update, to the digits of a double.</summary>
    /// <param name="island">The node's island.</param>
    /// <param name="member">Its place there.</param>
    /// <param name="volts">Takes the potentials.</param>
    public void At(int island, int member, Span<double> volts)
    {
        var potentials = CollectionsMarshal.AsSpan(_potentials);
        for (var update = 0; update < potentials.Length; update++)
            volts[update] = DoubleDouble.Difference(potentials[update].A.At(island, member), potentials[update].B.At(island, member));
    }

    /// <summary>Volts that one update sets up between the ends of another.</summary>
    public DoubleDouble Between(int update, NetworkUpdate other)
    {
        ref readonly var potential = ref CollectionsMarshal.AsSpan(_potentials)[update];
        return At(potential.A, other.A) - At(potential.A, other.B) - At(potential.B, other.A) + At(potential.B, other.B);
    }

    private DoubleDouble At(in Side side, int node) =>
        node == NetworkUpdate.Ground ? DoubleDouble.Zero : side.At(network.Islands.Of(node), network.IndexInIsland(node));

    private Potential PotentialOf(NetworkUpdate update)
    {
        var island = network.Islands.Of(update.A);
        if (update.B == NetworkUpdate.Ground)
            return new Potential(SideOf(update.A), Side.None);
        if (network.Islands.Of(update.B) != island || network.KeepsColumnsOf(island))
            return new Potential(SideOf(update.A), SideOf(update.B));
        var flow = Idle(island);
        flow.Start(network.IndexInIsland(update.A), network.IndexInIsland(update.B));
        return new Potential(new Side(island, null, flow), Side.None);
    }

    private Side SideOf(int node)
    {
        var island = network.Islands.Of(node);
        if (network.KeepsColumnsOf(island))
            return new Side(island, network.Column(node), null);
        var flow = Idle(island);
        flow.Start(network.IndexInIsland(node));
        return new Side(island, null, flow);
    }

    private FlowPotentials Idle(int island) =>
        _idle.TryGetValue(island, out var idle) && idle.TryPop(out var flow) ? flow : new FlowPotentials(network.FactorOf(island));

    private void GiveBack(Side side)
    {
        if (side.Flow is null)
            return;
        if (!_idle.TryGetValue(side.Island, out var idle))
            _idle[side.Island] = idle = new();
        if (idle.Count < MostIdle)
            idle.Push(side.Flow);
    }

    private readonly record struct Potential(Side A, Side B);

    // What one ampere into a node and out at ground does, or into one and out at another of the same island.
    private readonly record struct Side(int Island, DoubleDouble[]? Column, FlowPotentials? Flow)
    {
        public static Side None { get; } = new(NetworkUpdate.Ground, null, null);

        public DoubleDouble At(int island, int member) =>
            island != Island ? DoubleDouble.Zero : Column is not null ? Column[member] : Flow![member];
    }
}
