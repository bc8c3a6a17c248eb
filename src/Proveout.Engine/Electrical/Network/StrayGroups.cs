using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What junctions and insulation join where a change parts or joins what they end on. Reused from change to change by one thread.</summary>
/// <remarks>
/// Only islands that they joined to a touched one may now be joined otherwise. From each piece but that on which most ends, those with fewer ends first, a search goes along junctions and insulation until
/// it meets a piece that it was not known to be joined to, which is soon where much hangs together, or has seen all that hangs together with its own, which then stands apart. What no search has closed
/// off belongs together.
/// </remarks>
internal sealed class StrayGroups(StrayEnds rest, StraySums sums)
{
    private readonly List<(int Ends, int Piece)> _order = [];
    private readonly DisjointSets _pieces = new();
    private readonly DisjointSets _groups = new();
    private readonly List<int> _roots = [];
    private readonly List<int> _moved = [];
    private readonly List<int> _queue = [];
    private readonly List<int> _seen = [];
    private int[] _endsOf = [];
    private int[] _groupOf = [];
    private int[] _seenBy = [];
    private bool[] _isClosed = [];
    private ChangedPieces _changed = null!;
    private int[] _rootOf = [];

    /// <summary>Gives each piece and each island whose group changes what stands for all that is joined to it; returns these islands.</summary>
    /// <param name="changed">The change.</param>
    /// <param name="rootOf">For each island what stands for its group before the change; then for each piece, which stands for itself.</param>
    public List<int> Regroup(ChangedPieces changed, int[] rootOf)
    {
        (_changed, _rootOf) = (changed, rootOf);
        if (_seenBy.Length < rootOf.Length)
            (_seenBy, _isClosed, _endsOf, _groupOf) = (new int[rootOf.Length], new bool[rootOf.Length], new int[rootOf.Length], new int[rootOf.Length]);
        _moved.Clear();
        Prepare();
        for (var place = 0; place < _order.Count; place++)
            if (IsFollowed(place))
                Search(_order[place].Piece);
        Name();
        foreach (var id in _seen)
            (_seenBy[id], _isClosed[id]) = (0, false);
        _seen.Clear();
        return _moved;
    }

    private int NumberOf(int piece) => rest.Network.Islands.Count + piece - 1;

    private int NumberAt(int place) => _changed.AtPlace(place) is > 0 and var piece ? NumberOf(piece) : rest.IslandAt(place);

    // The pieces that something ends on, and which groups they join.
    private void Prepare()
    {
        _roots.Clear();
        foreach (var island in _changed.TouchedIslands)
            if (rest.EndsOf(island).Length > 0 && !_roots.Contains(rest.Pieces.RootOf(island)))
                _roots.Add(rest.Pieces.RootOf(island));
        _groups.Reset(_roots.Count);
        _pieces.Reset(_changed.Count + 1);
        _endsOf.AsSpan(0, _changed.Count + 1).Clear();
        for (var run = 0; run < _changed.Runs.Count; run++)
            if (sums.EndsOn(run) > 0)
            {
                var (piece, group) = (_changed.Runs[run].Piece, _roots.IndexOf(rest.Pieces.RootOf(rest.IslandAt(_changed.Runs[run].Start))));
                if (_endsOf[piece] > 0)
                    _groups.Join(_groupOf[piece], group);
                _groupOf[piece] = group;
                _endsOf[piece] += sums.EndsOn(run);
            }

        _order.Clear();
        for (var piece = 1; piece <= _changed.Count; piece++)
            if (_endsOf[piece] > 0)
                _order.Add((_endsOf[piece], piece));
        _order.Sort();
    }

    private int GroupOf(int piece) => _groups.RootOf(_groupOf[piece]);

    private bool IsFollowed(int place)
    {
        for (var later = place + 1; later < _order.Count; later++)
            if (GroupOf(_order[later].Piece) == GroupOf(_order[place].Piece))
                return true;
        return false;
    }

    private void Search(int piece)
    {
        _queue.Clear();
        See(NumberOf(piece), piece);
        for (var next = 0; next < _queue.Count; next++)
            if (!StepFrom(_queue[next], piece))
                return;
        foreach (var id in _queue)
        {
            _isClosed[id] = true;
            _rootOf[id] = NumberOf(piece);
            if (id < rest.Network.Islands.Count)
                _moved.Add(id);
        }
    }

    // False once the search has met a piece that was not known to be joined.
    private bool StepFrom(int id, int piece)
    {
        if (id < rest.Network.Islands.Count)
        {
            foreach (var end in rest.EndsOf(id))
                if (!Reach(NumberAt(end.Other), piece))
                    return false;
            return true;
        }

        for (var run = 0; run < _changed.Runs.Count; run++)
            if (NumberOf(_changed.Runs[run].Piece) == id && sums.EndsOn(run) > 0)
                foreach (var end in rest.EndsIn(_changed.Runs[run].Start, _changed.Runs[run].End))
                    if (PieceRun.Holding(_changed.Runs, end.Place) == run && !Reach(NumberAt(end.Other), piece))
                        return false;
        return true;
    }

    private bool Reach(int id, int piece)
    {
        if (_seenBy[id] == piece)
            return true;
        var other = id < rest.Network.Islands.Count ? _seenBy[id] : id - NumberOf(1) + 1;
        if (other > 0 && _pieces.Join(piece, other))
            return false;
        See(id, piece);
        return true;
    }

    private void See(int id, int piece)
    {
        if (_seenBy[id] == 0)
            _seen.Add(id);
        _seenBy[id] = piece;
        _queue.Add(id);
    }

    // Of groups that pieces join the largest lends its name.
    private void Name()
    {
        for (var group = 0; group < _roots.Count; group++)
        {
            var largest = LargestBeside(group);
            if (largest != group)
                foreach (var island in rest.IslandsOf(_roots[group]))
                    if (!_isClosed[island])
                    {
                        _rootOf[island] = _roots[largest];
                        _moved.Add(island);
                    }
        }

        foreach (var (_, piece) in _order)
            if (!_isClosed[NumberOf(piece)])
                _rootOf[NumberOf(piece)] = _roots[LargestBeside(_groupOf[piece])];
    }

    private int LargestBeside(int group)
    {
        var largest = group;
        for (var other = 0; other < _roots.Count; other++)
            if (_groups.RootOf(other) == _groups.RootOf(group)
                && (rest.IslandsOf(_roots[other]).Length, _roots[other]).CompareTo((rest.IslandsOf(_roots[largest]).Length, _roots[largest])) > 0)
                largest = other;
        return largest;
    }
}
