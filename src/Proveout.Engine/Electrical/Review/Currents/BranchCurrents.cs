using System.Runtime.InteropServices;

namespace Proveout.Engine.Electrical;

/// <summary>The current in each element and at each terminal, with everything at work at once.</summary>
/// <remarks>Each demand takes the way of least resistance; where two ways share, it is put on one of them.</remarks>
internal sealed class BranchCurrents
{
    private readonly Dictionary<int, Flow> _elements = [];
    private readonly Dictionary<int, Flow> _terminals = [];

    public BranchCurrents(IEnumerable<Demand> demands, WiringNetwork wiring)
    {
        foreach (var demand in demands.Where(demand => demand.WorstAmperes > 0))
            foreach (var (element, _) in demand.Reach.WayTo(demand.Fed).Concat(demand.Reach.WayBack(demand.Returned)))
            {
                Add(_elements, element.Index, demand);
                // What comes to a terminal from outside comes over a joint or a plug's contact; what only passes inside its part is not its load.
                if (element.Kind is ElementKind.Joint or ElementKind.Mating)
                    foreach (var end in new[] { element.A, element.B })
                        if (wiring.Nodes[end].Kind == NodeKind.Terminal)
                            Add(_terminals, end, demand);
            }
    }

    /// <summary>Every terminal that carries current, by its node.</summary>
    public IEnumerable<(int Node, Flow Flow)> Terminals => _terminals.Select(pair => (pair.Key, pair.Value));

    /// <summary>What flows through an element; null when nothing known does.</summary>
    public Flow? In(NetworkElement element) => _elements.GetValueOrDefault(element.Index);

    private static void Add(Dictionary<int, Flow> flows, int at, Demand demand)
    {
        ref var flow = ref CollectionsMarshal.GetValueRefOrAddDefault(flows, at, out _);
        (flow ??= new()).Add(demand);
    }
}
