using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What of junctions and insulation touches each piece that a change of a network leaves. Reused from change to change by one thread.</summary>
/// <remarks>
/// Only what ends on the islands that the change touches is summed anew, in the order in which all would be. What joins what is found anew only where
/// the junctions and the insulation of an island now end on several pieces, or those of several islands on one; else the one piece of each island that
/// they end on stands where the island stood, and the others stand alone.
/// </remarks>
internal sealed class ChangedStrays
{
    private readonly StrayIslands _rest;
    private readonly JunctionWays _ways;
    private readonly List<int> _insulation = [];
    private readonly List<int> _junctions = [];
    private readonly List<int> _heirs = [];
    private readonly List<int> _regrouped = [];
    private double[] _leakage;
    private int[] _rootOf;
    private double[] _leastVolts;
    private ChangedPieces? _changed;

    /// <summary>Prepares for changes of a network.</summary>
    public ChangedStrays(StrayIslands rest)
    {
        _rest = rest;
        (_leakage, _rootOf, _leastVolts) = ([], [], []);
        Grow(rest.Islands.Count + 1);
        Pieces = new StrayPieces(_leakage, _rootOf, _leastVolts, LeastVolts);
        _ways = new JunctionWays(rest);
    }

    /// <summary>What touches each piece, until the next change is found; a piece from 1 has the number of islands less one added to its own.</summary>
    public StrayPieces Pieces { get; private set; }

    /// <summary>True when junctions and insulation may join what they did not join before, or no longer join what they joined.</summary>
    public bool IsRegrouped => _regrouped.Count > 0;

    /// <summary>True when a piece is touched by the very junctions and insulation that touched a touched island.</summary>
    public bool Keeps(int island, int piece) =>
        !IsRegrouped && (_heirs[_changed!.TouchedIslands.IndexOf(island)] is > 0 and var heir ? heir == piece : !_heirs.Contains(piece));

    /// <summary>Sums up what touches the pieces of a change that parts or joins some; good until the next call.</summary>
    public StrayPieces Of(ChangedPieces changed)
    {
        foreach (var island in _regrouped)
            _rootOf[island] = _rest.Pieces.RootOf(island);
        _regrouped.Clear();
        _changed = changed;
        if (_rootOf.Length < _rest.Islands.Count + changed.Count)
            Grow(_rest.Islands.Count + (2 * changed.Count));
        for (var piece = 1; piece <= changed.Count; piece++)
            (_leakage[NumberOf(piece)], _rootOf[NumberOf(piece)], _leastVolts[NumberOf(piece)]) = (0, NumberOf(piece), double.PositiveInfinity);
        AddStrays();
        if (KeepsGroups())
            foreach (var (index, piece) in _heirs.Index())
            {
                if (piece > 0)
                    _rootOf[NumberOf(piece)] = _rest.Pieces.RootOf(changed.TouchedIslands[index]);
            }
        else
            Regroup();
        return Pieces;
    }

    private int NumberOf(int piece) => _rest.Islands.Count + piece - 1;

    private int PieceOf(int node) => _changed!.Of(node) is > 0 and var piece ? NumberOf(piece) : _rest.Islands.Of(node);

    private void Grow(int count)
    {
        var before = _rootOf.Length;
        Array.Resize(ref _leakage, count);
        Array.Resize(ref _rootOf, count);
        Array.Resize(ref _leastVolts, count);
        for (var island = before; island < _rest.Islands.Count; island++)
            (_leakage[island], _rootOf[island], _leastVolts[island]) =
                (_rest.Pieces.LeakageOf(island), _rest.Pieces.RootOf(island), _rest.Pieces.LeastVoltsOf(island));
        Pieces = new StrayPieces(_leakage, _rootOf, _leastVolts, LeastVolts);
    }

    private void AddStrays()
    {
        Gather(_insulation, ofJunctions: false);
        foreach (var index in _insulation)
        {
            var (a, b, siemens) = _rest.Paths.Insulation[index];
            var (pieceOfA, pieceOfB) = (_changed!.Of(a), _changed.Of(b));
            if (pieceOfA > 0)
                _leakage[NumberOf(pieceOfA)] += siemens;
            if (pieceOfB > 0 && pieceOfB != pieceOfA)
                _leakage[NumberOf(pieceOfB)] += siemens;
        }

        Gather(_junctions, ofJunctions: true);
        foreach (var index in _junctions)
        {
            var (anode, cathode, forward) = _rest.Paths.Junctions[index];
            Lower(_changed!.Of(anode), forward);
            Lower(_changed.Of(cathode), forward);
        }
    }

    private void Lower(int piece, double forward)
    {
        if (piece > 0)
            _leastVolts[NumberOf(piece)] = Math.Min(_leastVolts[NumberOf(piece)], forward);
    }

    // Each once and rising, so that sums are those of all pieces made anew, to the last digit.
    private void Gather(List<int> gathered, bool ofJunctions)
    {
        gathered.Clear();
        var sources = 0;
        foreach (var island in _changed!.TouchedIslands)
        {
            var here = ofJunctions ? _rest.JunctionsAt(island) : _rest.InsulationAt(island);
            sources += here.Length > 0 ? 1 : 0;
            gathered.AddRange(here);
        }

        if (sources < 2)
            return;
        gathered.Sort();
        var kept = 0;
        for (var index = 0; index < gathered.Count; index++)
            if (index == 0 || gathered[index] != gathered[index - 1])
                gathered[kept++] = gathered[index];
        gathered.RemoveRange(kept, gathered.Count - kept);
    }

    // The piece of each touched island that its junctions and insulation end on, 0 where it has none; false when they end on several.
    private bool KeepsGroups()
    {
        _heirs.Clear();
        foreach (var island in _changed!.TouchedIslands)
        {
            var heir = 0;
            foreach (var index in _rest.InsulationAt(island))
                if (!Inherits(_rest.Paths.Insulation[index].A, island, ref heir) || !Inherits(_rest.Paths.Insulation[index].B, island, ref heir))
                    return false;
            foreach (var index in _rest.JunctionsAt(island))
                if (!Inherits(_rest.Paths.Junctions[index].Anode, island, ref heir) || !Inherits(_rest.Paths.Junctions[index].Cathode, island, ref heir))
                    return false;
            if (heir > 0 && _heirs.Contains(heir))
                return false;
            _heirs.Add(heir);
        }

        return true;
    }

    private bool Inherits(int node, int island, ref int heir)
    {
        if (_rest.Islands.Of(node) != island)
            return true;
        var piece = _changed!.Of(node);
        if (heir == 0)
            heir = piece;
        return heir == piece;
    }

    private void Regroup()
    {
        foreach (var touched in _changed!.TouchedIslands)
            if (_rest.HasStrays(touched) && !_regrouped.Contains(touched))
                _regrouped.AddRange(_rest.IslandsOf(_rest.Pieces.RootOf(touched)));
        foreach (var island in _regrouped)
            _rootOf[island] = island;
        foreach (var island in _regrouped)
        {
            foreach (var index in _rest.InsulationAt(island))
                Join(_rest.Paths.Insulation[index].A, _rest.Paths.Insulation[index].B);
            foreach (var index in _rest.JunctionsAt(island))
                Join(_rest.Paths.Junctions[index].Anode, _rest.Paths.Junctions[index].Cathode);
        }

        foreach (var island in _regrouped)
            _rootOf[island] = Root(island);
        for (var piece = 1; piece <= _changed.Count; piece++)
            _rootOf[NumberOf(piece)] = Root(NumberOf(piece));
    }

    private void Join(int one, int other) => _rootOf[Root(PieceOf(one))] = Root(PieceOf(other));

    private int Root(int piece)
    {
        while (_rootOf[piece] != piece)
            piece = _rootOf[piece] = _rootOf[_rootOf[piece]];
        return piece;
    }

    private double LeastVolts(int red, int black) => _ways.LeastVolts(_changed!, red, black);
}
