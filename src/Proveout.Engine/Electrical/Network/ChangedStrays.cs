using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What of junctions and insulation touches each piece that a change of a network leaves. Reused from change to change by one thread.</summary>
/// <remarks>
/// What they join is found anew only where the junctions and the insulation of an island now end on several pieces, or those of several islands on one; else the one piece of each island that
/// they end on stands where the island stood, and the others stand alone.
/// </remarks>
internal sealed class ChangedStrays
{
    private readonly StrayEnds _rest;
    private readonly StraySums _sums;
    private readonly StrayGroups _groups;
    private readonly JunctionWays _ways;
    private readonly List<int> _heirs = [];
    private double[] _leakage = [];
    private int[] _rootOf = [];
    private double[] _leastVolts = [];
    private List<int> _moved = [];
    private ChangedPieces? _changed;

    /// <summary>Prepares for changes of a network.</summary>
    public ChangedStrays(StrayEnds rest)
    {
        _rest = rest;
        _sums = new StraySums(rest);
        _groups = new StrayGroups(rest, _sums);
        _ways = new JunctionWays(rest);
        Pieces = Grow(rest.Network.Islands.Count + 1);
    }

    /// <summary>What touches each piece, until the next change is found; a piece from 1 has the number of islands less one added to its own.</summary>
    public StrayPieces Pieces { get; private set; }

    /// <summary>True when junctions and insulation may join what they did not join before, or no longer join what they joined.</summary>
    public bool IsRegrouped { get; private set; }

    /// <summary>Islands that the change does not touch, but that junctions and insulation now join to others than before.</summary>
    public List<int> MovedIslands => _moved;

    /// <summary>True when a piece is touched by the very junctions and insulation that touched a touched island.</summary>
    public bool Keeps(int island, int piece) =>
        !IsRegrouped && (_heirs[_changed!.TouchedIslands.IndexOf(island)] is > 0 and var heir ? heir == piece : !_heirs.Contains(piece));

    /// <summary>True when junctions and insulation no longer join all that they joined.</summary>
    public bool PartsGroups()
    {
        var rootAfter = new Dictionary<int, int>();
        for (var run = 0; IsRegrouped && run < _changed!.Runs.Count; run++)
        {
            if (_sums.EndsOn(run) == 0)
                continue;
            var before = _rest.Pieces.RootOf(_rest.IslandAt(_changed.Runs[run].Start));
            var after = _rootOf[NumberOf(_changed.Runs[run].Piece)];
            if (!rootAfter.TryAdd(before, after) && rootAfter[before] != after)
                return true;
        }

        return false;
    }

    /// <summary>Sums up what touches the pieces of a change that parts or joins some; good until the next call.</summary>
    /// <param name="changed">The pieces.</param>
    /// <param name="isSame">True when they are as they were when these very pieces were last summed up; nothing is done when no others have been since.</param>
    public StrayPieces Of(ChangedPieces changed, bool isSame = false)
    {
        if (isSame && _changed == changed)
            return Pieces;
        foreach (var island in _moved)
            _rootOf[island] = _rest.Pieces.RootOf(island);
        _moved = [];
        _changed = changed;
        if (_rootOf.Length < NumberOf(changed.Count + 1))
            Pieces = Grow(NumberOf(2 * changed.Count));
        _sums.Find(changed);
        for (var piece = 1; piece <= changed.Count; piece++)
            (_leakage[NumberOf(piece)], _rootOf[NumberOf(piece)], _leastVolts[NumberOf(piece)]) = (_sums.LeakageOf(piece), NumberOf(piece), _sums.LeastVoltsOf(piece));
        IsRegrouped = !KeepsGroups();
        if (IsRegrouped)
            _moved = _groups.Regroup(changed, _rootOf);
        else
            foreach (var (index, piece) in _heirs.Index())
                if (piece > 0)
                    _rootOf[NumberOf(piece)] = _rest.Pieces.RootOf(changed.TouchedIslands[index]);
        return Pieces;
    }

    private int NumberOf(int piece) => _rest.Network.Islands.Count + piece - 1;

    private StrayPieces Grow(int count)
    {
        var before = _rootOf.Length;
        Array.Resize(ref _leakage, count);
        Array.Resize(ref _rootOf, count);
        Array.Resize(ref _leastVolts, count);
        for (var island = before; island < _rest.Network.Islands.Count; island++)
            (_leakage[island], _rootOf[island], _leastVolts[island]) =
                (_rest.Pieces.LeakageOf(island), _rest.Pieces.RootOf(island), _rest.Pieces.LeastVoltsOf(island));
        return new StrayPieces(_leakage, _rootOf, _leastVolts, LeastVolts);
    }

    // The piece of each touched island that its junctions and insulation end on, 0 where it has none; false when they end on several.
    private bool KeepsGroups()
    {
        _heirs.Clear();
        foreach (var island in _changed!.TouchedIslands)
        {
            if (!HasOneHeir(island, out var heir) || (heir > 0 && _heirs.Contains(heir)))
                return false;
            _heirs.Add(heir);
        }

        return true;
    }

    private bool HasOneHeir(int island, out int heir)
    {
        heir = 0;
        for (var run = 0; run < _changed!.Runs.Count; run++)
            if (_sums.EndsOn(run) > 0 && _rest.IslandAt(_changed.Runs[run].Start) == island)
            {
                if (heir > 0 && heir != _changed.Runs[run].Piece)
                    return false;
                heir = _changed.Runs[run].Piece;
            }

        return true;
    }

    private double LeastVolts(int red, int black) => _ways.LeastVolts(_changed!, red, black);
}
