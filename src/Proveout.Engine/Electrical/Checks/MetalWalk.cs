namespace Proveout.Engine.Electrical;

/// <summary>Walks along metal in one state of the machine.</summary>
/// <param name="wiring">The wiring.</param>
/// <param name="conducts">Which elements carry current in this state.</param>
/// <param name="places">The nodes that a lead can touch.</param>
internal sealed class MetalWalk(WiringNetwork wiring, Func<NetworkElement, bool> conducts, ProbePlaces places)
{
    // One added, so that 0 stands for none.
    private readonly int[] _farthest = new int[wiring.Nodes.Count];
    private readonly int[] _reachedIn = new int[wiring.Nodes.Count];
    private readonly List<int> _reached = [];
    private int _turn;

    /// <summary>The place most elements away from a node along metal; the node itself when there is no other.</summary>
    public int FarthestFrom(int start)
    {
        if (_farthest[start] == 0)
        {
            Walk(start);
            _farthest[start] = (_reached.FindLastIndex(places.Holds) is >= 0 and var last ? _reached[last] : start) + 1;
        }

        return _farthest[start] - 1;
    }

    /// <summary>The place with the lowest number that is one piece of metal with a node; null when there is none.</summary>
    public int? FirstPlaceWith(int node)
    {
        Walk(node);
        return _reached.Where(places.Holds).Select(place => (int?)place).Min();
    }

    private void Walk(int start)
    {
        _turn++;
        _reached.Clear();
        Reach(start);
        for (var next = 0; next < _reached.Count; next++)
            foreach (var element in wiring.ElementsAt(_reached[next]))
                if (element.IsMetal && conducts(element))
                    Reach(element.A == _reached[next] ? element.B : element.A);
    }

    private void Reach(int node)
    {
        if (_reachedIn[node] == _turn)
            return;
        _reachedIn[node] = _turn;
        _reached.Add(node);
    }
}
