using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The ports of one set-up with every resistance at one limit.</summary>
/// <remarks>
/// A set-up in which one control is operated is a change of the set-up with all controls at rest, like a fault: its ports are measured on the
/// network that is factored already.
/// </remarks>
internal sealed class LimitPorts
{
    private readonly bool[] _holdsIsland;
    private readonly ElementSwitches _switches;
    private readonly Lazy<PortMasks> _masks;

    /// <summary>Lists the ports.</summary>
    /// <param name="rest">The network with all controls at rest.</param>
    /// <param name="pairs">The ports.</param>
    /// <param name="operated">Elements that the operated control switches.</param>
    /// <param name="tied">Two nodes that a person joins by a short lead for these checks; null when none.</param>
    /// <param name="everyIsland">True when a change of an island without ports matters too, as junctions lead there.</param>
    /// <param name="unseenShares">For each port the share of its resistance below which a change is none.</param>
    /// <param name="low">The same ports at the limit of low resistances; null for that limit.</param>
    public LimitPorts(
        StateNetwork rest,
        (int A, int B)[] pairs,
        NetworkElement[] operated,
        (int A, int B)? tied = null,
        bool everyIsland = false,
        double[]? unseenShares = null,
        LimitPorts? low = null)
    {
        var atHigh = low is not null;
        HasStrays = !atHigh;
        Changes = new FaultChanges(rest, atHigh);
        _switches = atHigh ? rest.SwitchesAtHigh : rest.SwitchesAtLow;
        Ports = new Ports((atHigh ? rest.High : rest.Low).Network, pairs, low?.Ports, unseenShares);
        _masks = new(() => new PortMasks(Ports));
        Anchored = [.. pairs.SelectMany(pair => new[] { pair.A, pair.B }).Concat(operated.SelectMany(element => new[] { element.A, element.B })).Distinct()];
        Operated = [.. operated.Select(element => (element, _switches.Operate(element))).Where(item => item.Item2.DeltaConductance.High != 0)];
        Tied = tied is var (one, two) ? [EdgeChange.Add(one, two, 1 / JointBands.Joint.High)] : [];
        Controls = [.. Operated.Select(item => item.Change), .. Tied];
        _holdsIsland = new bool[Ports.Network.Islands.Count];
        Array.Fill(_holdsIsland, everyIsland);
        foreach (var node in Ports.Nodes.Concat(operated.SelectMany(element => new[] { element.A, element.B })))
            _holdsIsland[Ports.Network.Islands.Of(node)] = true;
    }

    /// <summary>The ports, on the network with all controls at rest.</summary>
    public Ports Ports { get; private set; }

    /// <summary>True when junctions and insulation count at this limit: they only lower a reading.</summary>
    public bool HasStrays { get; }

    /// <summary>The ports of each island.</summary>
    public PortMasks Masks => _masks.Value;

    /// <summary>Number of words of 64 bits that hold a bit for every port.</summary>
    public int WordCount => (Ports.Pairs.Length + 63) / 64;

    /// <summary>The nodes of the ports and of the elements that the operated control switches.</summary>
    public int[] Anchored { get; }

    /// <summary>What faults change.</summary>
    public FaultChanges Changes { get; }

    /// <summary>True when a control is operated that switches something, or a lead lies between two places.</summary>
    public bool HasControls => Operated.Length > 0 || Tied.Length > 0;

    /// <summary>What the operated control and the lead change in the sound machine.</summary>
    public EdgeChange[] Controls { get; }

    /// <summary>The elements that the operated control switches, each with what that changes.</summary>
    private (NetworkElement Element, EdgeChange Change)[] Operated { get; }

    /// <summary>The islands that hold a port, or an end of an element that the operated control switches.</summary>
    public IEnumerable<int> HeldIslands => _holdsIsland.Index().Where(island => island.Item).Select(island => island.Index);

    /// <summary>Numbers of the elements that the operated control switches.</summary>
    public IEnumerable<int> OperatedElements => Operated.Select(operated => operated.Element.Index);

    /// <summary>True when the operated control switches an element.</summary>
    public bool Operates(int element)
    {
        foreach (var (operated, _) in Operated)
            if (operated.Index == element)
                return true;
        return false;
    }

    /// <summary>True when a lead lies between two places.</summary>
    public bool IsTied => Tied.Length > 0;

    /// <summary>What a lead between two places changes.</summary>
    private EdgeChange[] Tied { get; }

    /// <summary>The same with other ohms up to which a change of each port's resistance is none, and only some of the ports looked at.</summary>
    public LimitPorts Noticing(double[] unseenOhms, Func<int, bool>? isListed = null)
    {
        var same = (LimitPorts)MemberwiseClone();
        same.Ports = Ports.Noticing(unseenOhms, isListed);
        return same;
    }

    /// <summary>Adds what the operated control and a lead between two places change in a machine with a fault.</summary>
    /// <remarks>A contact that is not there does not move; one of the other sense then stands as the sound one does at rest.</remarks>
    /// <param name="faulty">What the fault does, or several faults made at once.</param>
    /// <param name="changes">Holds the same as changes of the network; what the control and the lead change is added.</param>
    public void AddControls(IReadOnlyList<ElementChange> faulty, List<EdgeChange> changes)
    {
        changes.AddRange(Tied);
        foreach (var (element, change) in Operated)
        {
            var found = MovedBy(faulty, element.Index);
            if (found is null)
                changes.Add(change);
            else if (found is Invert && changes.Remove(change) && _switches.Touch(element) is { } touch)
                changes.Add(touch);
        }
    }

    private static ElementChange? MovedBy(IReadOnlyList<ElementChange> faulty, int element)
    {
        for (var index = 0; index < faulty.Count; index++)
            if (faulty[index] is Cut or Invert && faulty[index].ChangedElement == element)
                return faulty[index];
        return null;
    }

    /// <summary>True when a change can alter a port.</summary>
    public bool IsReachedBy(List<EdgeChange> changes)
    {
        foreach (var change in changes)
            if (_holdsIsland[Ports.Network.Islands.Of(change.A)] || _holdsIsland[Ports.Network.Islands.Of(change.B)])
                return true;
        return false;
    }
}
