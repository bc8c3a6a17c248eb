using System.Runtime.InteropServices;

namespace Proveout.Engine.Electrical;

/// <summary>The current in each element and at each node, with everything at work at once.</summary>
/// <remarks>Each demand takes the way of least resistance; where two ways share, it is put on one of them.</remarks>
internal sealed class BranchCurrents
{
    private readonly Dictionary<int, Flow> _elements = [];
    private readonly Dictionary<int, Flow> _nodes = [];

    public BranchCurrents(IEnumerable<Demand> demands)
    {
        foreach (var demand in demands.Where(demand => demand.WorstAmperes > 0))
        {
            Add(_nodes, demand.Reach.Supply.Plus, demand);
            Add(_nodes, demand.Reach.Supply.Zero, demand);
            foreach (var (element, node) in demand.Reach.WayTo(demand.Fed).Concat(demand.Reach.WayBack(demand.Returned)))
            {
                Add(_elements, element.Index, demand);
                Add(_nodes, node, demand);
            }
        }
    }

    /// <summary>Every node that carries current.</summary>
    public IEnumerable<(int Node, Flow Flow)> Nodes => _nodes.Select(pair => (pair.Key, pair.Value));

    /// <summary>What flows through an element; null when nothing known does.</summary>
    public Flow? In(NetworkElement element) => _elements.GetValueOrDefault(element.Index);

    private static void Add(Dictionary<int, Flow> flows, int at, Demand demand)
    {
        ref var flow = ref CollectionsMarshal.GetValueRefOrAddDefault(flows, at, out _);
        (flow ??= new()).Add(demand);
    }
}
