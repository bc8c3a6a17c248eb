using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Which of the set-ups with a control operated a fault can concern at all, told from the islands and the elements that it touches. One thread's own.</summary>
internal sealed class OperatedReach
{
    private readonly Dictionary<int, List<int>> _byIslandAtLow = [];
    private readonly Dictionary<int, List<int>> _byIslandAtHigh = [];
    private readonly Dictionary<int, List<int>> _byElement = [];
    private readonly List<int> _parting = [];
    private readonly List<int> _turnOf = [];
    private int _turn;

    /// <summary>Takes a set-up; returns the place by which it is asked for.</summary>
    public int Add(PortTable table)
    {
        var place = _turnOf.Count;
        _turnOf.Add(0);
        foreach (var island in table.Low.HeldIslands)
            List(_byIslandAtLow, island, place);
        foreach (var island in table.High.HeldIslands)
            List(_byIslandAtHigh, island, place);
        foreach (var element in table.Low.OperatedElements.Concat(table.High.OperatedElements))
            List(_byElement, element, place);
        if (table.PartsStrays)
            _parting.Add(place);
        return place;
    }

    /// <summary>Finds those that a fault can concern.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="atRest">The worker with all controls at rest, to which the fault was applied.</param>
    public void Find(WiringFault fault, PortWorker atRest)
    {
        _turn++;
        Mark(_byIslandAtLow, atRest.Low.ChangesOf(fault), atRest.Table.Low.Ports.Network.Islands);
        Mark(_byIslandAtHigh, atRest.High.ChangesOf(fault), atRest.Table.High.Ports.Network.Islands);
        for (var change = 0; change < fault.Changes.Count; change++)
            if (fault.Changes[change].ChangedElement is { } element)
                Mark(_byElement, element);
        if (!atRest.MovesPieces)
            return;
        foreach (var place in _parting)
            _turnOf[place] = _turn;
        foreach (var island in atRest.ChangedStrays.MovedIslands)
            Mark(_byIslandAtLow, island);
    }

    /// <summary>False when the fault surely leaves a set-up alone.</summary>
    public bool MayConcern(int place) => _turnOf[place] == _turn;

    private static void List(Dictionary<int, List<int>> places, int key, int place)
    {
        if (!places.TryGetValue(key, out var list))
            places.Add(key, list = []);
        list.Add(place);
    }

    private void Mark(Dictionary<int, List<int>> places, List<EdgeChange> changes, Islands islands)
    {
        foreach (var change in changes)
        {
            Mark(places, islands.Of(change.A));
            Mark(places, islands.Of(change.B));
        }
    }

    private void Mark(Dictionary<int, List<int>> places, int key)
    {
        if (places.TryGetValue(key, out var list))
            foreach (var place in list)
                _turnOf[place] = _turn;
    }
}
