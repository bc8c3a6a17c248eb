using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Which of the set-ups with a control operated a fault concerns, told from where it lies and what it moves while all controls are at rest. One thread's own.</summary>
internal sealed class OperatedReach
{
    private readonly Dictionary<int, List<int>> _byIsland = [];
    private readonly Dictionary<int, List<int>> _byElement = [];
    private readonly List<int> _parting = [];
    private readonly List<(int Reached, int Near)> _turns = [];
    private readonly Action<int> _reach;
    private PortPaths? _paths;
    private int _turn;

    /// <summary>Prepares for set-ups.</summary>
    public OperatedReach() => _reach = place => _turns[place] = _turns[place] with { Reached = _turn };

    /// <summary>Takes a set-up; returns the place by which it is asked for.</summary>
    public int Add(PortTable table)
    {
        var place = _turns.Count;
        _turns.Add((0, 0));
        _paths ??= new PortPaths(table.Rest.Closed);
        _paths.Add(place, table.Low.Ports.Pairs.Select(pair => (table.Low.Ports.Nodes[pair.A], table.Low.Ports.Nodes[pair.B])));
        foreach (var island in table.Low.HeldIslands)
            List(_byIsland, island, place);
        foreach (var element in table.Low.OperatedElements.Concat(table.High.OperatedElements))
            List(_byElement, element, place);
        if (table.PartsStrays)
            _parting.Add(place);
        return place;
    }

    /// <summary>Finds those in which a fault can alter a resistance, whatever junctions and insulation do.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="atRest">The ports with all controls at rest, whether or not the fault was applied to them.</param>
    public void FindByWay(WiringFault fault, FaultyPorts atRest)
    {
        if (_paths is null)
            return;
        _turn++;
        _paths.Find(atRest.Low.ChangesOf(fault), _reach);
        _paths.Find(atRest.High.ChangesOf(fault), _reach);
        for (var change = 0; change < fault.Changes.Count; change++)
            if (fault.Changes[change].ChangedElement is { } element && _byElement.TryGetValue(element, out var operated))
                operated.ForEach(_reach);
    }

    /// <summary>Finds those that a fault concerns.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="atRest">The ports with all controls at rest, to which the fault was applied.</param>
    public void Find(WiringFault fault, FaultyPorts atRest)
    {
        if (_paths is null)
            return;
        FindByWay(fault, atRest);
        if (!atRest.MovesPieces)
            return;
        _parting.ForEach(_reach);
        foreach (var island in atRest.ChangedStrays.MovedIslands)
            if (_byIsland.TryGetValue(island, out var moved))
                moved.ForEach(_reach);
        foreach (var island in atRest.Low.Network.TouchedIslands)
            if (_byIsland.TryGetValue(island, out var near))
                foreach (var place in near)
                    _turns[place] = _turns[place] with { Near = _turn };
    }

    /// <summary>True when the fault has a way in common with a port of the set-up, wherever contacts stand, changes what its control switches, or moves junctions and insulation there.</summary>
    public bool Reaches(int place) => _turns[place].Reached == _turn;

    /// <summary>True when the fault parts or joins an island of the set-up.</summary>
    public bool IsNear(int place) => _turns[place].Near == _turn;

    private static void List(Dictionary<int, List<int>> places, int key, int place)
    {
        if (!places.TryGetValue(key, out var list))
            places.Add(key, list = []);
        list.Add(place);
    }
}
