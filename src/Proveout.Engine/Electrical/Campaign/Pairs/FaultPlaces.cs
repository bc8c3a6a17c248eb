namespace Proveout.Engine.Electrical;

/// <summary>Where faults change the wiring.</summary>
internal sealed class FaultPlaces
{
    private readonly List<int>[] _faultsAt;
    private readonly ILookup<int, int> _faultsOf;

    /// <summary>Lists the faults by the nodes that they change something at.</summary>
    public FaultPlaces(WiringNetwork wiring, IReadOnlyList<WiringFault> faults)
    {
        Faults = faults;
        _faultsAt = [.. wiring.Nodes.Select(_ => new List<int>())];
        foreach (var (index, fault) in faults.Index())
            foreach (var node in fault.Changes.SelectMany(change => change.NodesIn(wiring)).Distinct())
                _faultsAt[node].Add(index);
        _faultsOf = faults.Index()
            .SelectMany(item => Contradictions.ElementsOf(item.Item).Select(element => (Element: element, Fault: item.Index)))
            .ToLookup(pair => pair.Element, pair => pair.Fault);
    }

    /// <summary>The faults.</summary>
    public IReadOnlyList<WiringFault> Faults { get; }

    /// <summary>The faults that change something at a node, rising.</summary>
    public List<int> At(int node) => _faultsAt[node];

    /// <summary>The faults that change an element, rising.</summary>
    public IEnumerable<int> Of(int element) => _faultsOf[element];
}
