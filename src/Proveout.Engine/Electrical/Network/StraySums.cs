using System.Runtime.InteropServices;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>How many junctions and how much insulation end on each piece that a change leaves. Reused from change to change by one thread.</summary>
/// <remarks>
/// A piece is some runs of the search order without the runs inside them, and what ends on a run is told in a few steps (<see cref="StrayEnds"/>). Only insulation from a piece to itself, which is
/// counted at both its ends, is looked for: among what ends on the piece, or, of sums made once for its islands, among what ends on them beside it, whichever is less.
/// </remarks>
internal sealed class StraySums(StrayEnds rest)
{
    private readonly List<StrayTotal> _insulation = [];
    private readonly List<int> _junctions = [];
    private readonly List<int> _ends = [];
    private readonly List<StrayTotal> _ofPiece = [];
    private readonly List<int> _junctionsOfPiece = [];
    private readonly List<int> _islands = [];
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
        for (var piece = 1; piece <= changed.Count; piece++)
            _ofPiece[piece - 1] -= WithinPiece(piece);
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
        for (var run = 0; run < _changed.Runs.Count; run++)
        {
            var piece = _changed.Runs[run].Piece - 1;
            _ofPiece[piece] += _insulation[run];
            var onPiece = JunctionsOf(_junctionsOfPiece, piece);
            for (var kind = 0; kind < onPiece.Length; kind++)
                onPiece[kind] += JunctionsOf(_junctions, run)[kind];
        }
    }

    private StrayTotal WithinPiece(int piece)
    {
        FindIslands(piece);
        var (inside, beside) = (0, 0);
        for (var run = 0; run < _changed.Runs.Count; run++)
            if (_changed.Runs[run].Piece == piece)
                inside += _insulation[run].Number;
            else if (_islands.Contains(IslandOf(run)))
                beside += _insulation[run].Number;
        return inside == 0 ? default : inside <= beside ? WithBothEndsOn(piece) : BetweenIslands() - WithEndBeside(piece);
    }

    private void FindIslands(int piece)
    {
        _islands.Clear();
        for (var run = 0; run < _changed.Runs.Count; run++)
            if (_changed.Runs[run].Piece == piece && !_islands.Contains(IslandOf(run)))
                _islands.Add(IslandOf(run));
    }

    private StrayTotal WithBothEndsOn(int piece)
    {
        var within = default(StrayTotal);
        for (var run = 0; run < _changed.Runs.Count; run++)
            if (_changed.Runs[run].Piece == piece)
                foreach (var stray in rest.EndsIn(_changed.Runs[run].Start, _changed.Runs[run].End))
                    if (stray.IsInsulation && stray.IsFirst && IsOn(run, stray.Place) && _changed.AtPlace(stray.Other) == piece)
                        within += new StrayTotal(1, stray.Siemens);
        return within;
    }

    private StrayTotal BetweenIslands()
    {
        var between = default(StrayTotal);
        for (var one = 0; one < _islands.Count; one++)
            for (var other = 0; other <= one; other++)
                between += rest.Between(_islands[one], _islands[other]);
        return between;
    }

    // Between the same islands, with an end that is not on the piece; where neither is, it is met at both.
    private StrayTotal WithEndBeside(int piece)
    {
        var beside = default(StrayTotal);
        for (var run = 0; run < _changed.Runs.Count; run++)
            if (_changed.Runs[run].Piece != piece && _islands.Contains(IslandOf(run)))
                foreach (var stray in rest.EndsIn(_changed.Runs[run].Start, _changed.Runs[run].End))
                    if (stray.IsInsulation && IsOn(run, stray.Place) && _islands.Contains(rest.IslandAt(stray.Other)) && (stray.IsFirst || _changed.AtPlace(stray.Other) == piece))
                        beside += new StrayTotal(1, stray.Siemens);
        return beside;
    }

    private int IslandOf(int run) => rest.IslandAt(_changed.Runs[run].Start);

    private bool IsOn(int run, int place) => PieceRun.Holding(_changed.Runs, place) == run;

    private Span<int> JunctionsOf(List<int> junctions, int place) => CollectionsMarshal.AsSpan(junctions).Slice(place * rest.Volts.Length, rest.Volts.Length);

    private static void Zero<T>(List<T> list, int count)
        where T : struct
    {
        CollectionsMarshal.SetCount(list, count);
        CollectionsMarshal.AsSpan(list).Clear();
    }
}
