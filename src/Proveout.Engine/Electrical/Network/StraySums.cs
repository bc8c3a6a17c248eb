using System.Runtime.InteropServices;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>How many junctions and how much insulation end on each piece that a change leaves. Reused from change to change by one thread.</summary>
/// <remarks>
/// A piece is some runs of the search order without the runs inside them, and what ends on a run is told in a few steps (<see cref="StrayEnds"/>). Only insulation from a piece to itself, which is
/// counted at both its ends, is looked for: from all runs of the piece but that where most ends, within that from what ends on it or beside it, and, where islands are joined as they are, among sums made once.
/// </remarks>
internal sealed class StraySums(StrayEnds rest)
{
    private readonly List<StrayTotal> _insulation = [];
    private readonly List<int> _junctions = [];
    private readonly List<int> _ends = [];
    private readonly List<StrayTotal> _ofPiece = [];
    private readonly List<int> _junctionsOfPiece = [];
    private readonly List<int> _mostEnds = [];
    private ChangedPieces _changed = null!;

    /// <summary>Number of ends on a run without the runs inside it; runs as <see cref="ChangedPieces.Runs"/> has them.</summary>
    public int EndsOn(int run) => _ends[run];

    /// <summary>Conductance in siemens of all insulation that touches a piece, numbered from 1.</summary>
    public double LeakageOf(int piece) => _ofPiece[piece - 1].Sum;

    /// <summary>Lowest forward voltage of the junctions that touch a piece, numbered from 1; infinite when none does.</summary>
    public double LeastVoltsOf(int piece)
    {
        for (var kind = 0; kind < rest.Volts.Length; kind++)
            if (_junctionsOfPiece[((piece - 1) * rest.Volts.Length) + kind] > 0)
                return rest.Volts[kind];
        return double.PositiveInfinity;
    }

    /// <summary>Sums up what ends on the pieces of a change.</summary>
    public void Find(ChangedPieces changed)
    {
        _changed = changed;
        SumRuns();
        SumPieces();
        if (changed.Runs.Count == changed.TouchedIslands.Count)
            TakeAwayBetweenIslands();
        else
            for (var run = 0; run < changed.Runs.Count; run++)
                TakeAwayWithin(run);
    }

    private void SumRuns()
    {
        Zero(_insulation, _changed.Runs.Count);
        Zero(_junctions, _changed.Runs.Count * rest.Volts.Length);
        for (var run = 0; run < _changed.Runs.Count; run++)
        {
            AddAll(run, run, 1);
            if (PieceRun.Around(_changed.Runs, run) is >= 0 and var around)
                AddAll(run, around, -1);
        }

        CollectionsMarshal.SetCount(_ends, _changed.Runs.Count);
        for (var run = 0; run < _changed.Runs.Count; run++)
        {
            _ends[run] = _insulation[run].Number;
            foreach (var number in JunctionsOf(_junctions, run))
                _ends[run] += number;
        }
    }

    private void AddAll(int run, int to, int factor)
    {
        var (start, end, _) = _changed.Runs[run];
        var insulation = rest.InsulationIn(start, end);
        _insulation[to] = factor > 0 ? _insulation[to] + insulation : _insulation[to] - insulation;
        rest.AddJunctions(start, end, factor, JunctionsOf(_junctions, to));
    }

    private void SumPieces()
    {
        Zero(_ofPiece, _changed.Count);
        Zero(_junctionsOfPiece, _changed.Count * rest.Volts.Length);
        CollectionsMarshal.SetCount(_mostEnds, _changed.Count);
        CollectionsMarshal.AsSpan(_mostEnds).Fill(-1);
        for (var run = 0; run < _changed.Runs.Count; run++)
        {
            var piece = _changed.Runs[run].Piece - 1;
            _ofPiece[piece] += _insulation[run];
            var onPiece = JunctionsOf(_junctionsOfPiece, piece);
            for (var kind = 0; kind < onPiece.Length; kind++)
                onPiece[kind] += JunctionsOf(_junctions, run)[kind];
            if (_mostEnds[piece] < 0 || _insulation[run].Number > _insulation[_mostEnds[piece]].Number)
                _mostEnds[piece] = run;
        }
    }

    private void TakeAwayBetweenIslands()
    {
        for (var run = 0; run < _changed.Runs.Count; run++)
            for (var other = 0; other <= run; other++)
                if (_changed.Runs[run].Piece == _changed.Runs[other].Piece)
                    _ofPiece[_changed.Runs[run].Piece - 1] -= rest.Between(rest.IslandAt(_changed.Runs[run].Start), rest.IslandAt(_changed.Runs[other].Start));
    }

    private void TakeAwayWithin(int run)
    {
        var (start, end, piece) = _changed.Runs[run];
        if (_insulation[run].Number == 0)
            return;
        if (_mostEnds[piece - 1] == run)
        {
            _ofPiece[piece - 1] -= Within(run);
            return;
        }

        foreach (var stray in rest.EndsIn(start, end))
        {
            if (!stray.IsInsulation || PieceRun.Holding(_changed.Runs, stray.Place) != run)
                continue;
            var at = PieceRun.Holding(_changed.Runs, stray.Other);
            // From a run that is looked through too it is met at both ends.
            if (at >= 0 && _changed.Runs[at].Piece == piece && (stray.IsFirst || at == _mostEnds[piece - 1]))
                _ofPiece[piece - 1] -= new StrayTotal(1, stray.Siemens);
        }
    }

    // From a run to itself: what has both ends there, or all of its island but what has an end elsewhere on it, whichever is the shorter list.
    private StrayTotal Within(int run)
    {
        var (start, end, _) = _changed.Runs[run];
        var island = rest.IslandAt(start);
        if (2 * _insulation[run].Number > rest.EndsOf(island).Length)
            return rest.Between(island, island) - WithEndBeside(run, island);
        var within = default(StrayTotal);
        foreach (var stray in rest.EndsIn(start, end))
            if (stray.IsInsulation && stray.IsFirst && PieceRun.Holding(_changed.Runs, stray.Place) == run && PieceRun.Holding(_changed.Runs, stray.Other) == run)
                within += new StrayTotal(1, stray.Siemens);
        return within;
    }

    // From an island to itself with an end on another of its runs; where both are, it is met twice.
    private StrayTotal WithEndBeside(int run, int island)
    {
        var beside = default(StrayTotal);
        for (var other = 0; other < _changed.Runs.Count; other++)
        {
            var (start, end, _) = _changed.Runs[other];
            if (other == run || rest.IslandAt(start) != island)
                continue;
            foreach (var stray in rest.EndsIn(start, end))
                if (stray.IsInsulation && rest.IslandAt(stray.Other) == island && PieceRun.Holding(_changed.Runs, stray.Place) == other
                    && (stray.IsFirst || PieceRun.Holding(_changed.Runs, stray.Other) == run))
                    beside += new StrayTotal(1, stray.Siemens);
        }

        return beside;
    }

    private Span<int> JunctionsOf(List<int> junctions, int place) => CollectionsMarshal.AsSpan(junctions).Slice(place * rest.Volts.Length, rest.Volts.Length);

    private static void Zero<T>(List<T> list, int count)
        where T : struct
    {
        CollectionsMarshal.SetCount(list, count);
        CollectionsMarshal.AsSpan(list).Clear();
    }
}
