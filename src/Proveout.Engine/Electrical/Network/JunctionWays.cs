using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>
/// The ways that current can take from piece to piece of a network: through junctions from anode to cathode, through insulation either way. One thread's own.
/// </summary>
/// <remarks>
/// Current from red to black runs along paths (flow decomposition) on which no element has a voltage against it; through a junction it drops the
/// junction's forward voltage or more.
/// </remarks>
internal sealed class JunctionWays(StrayEnds strays)
{
    private readonly List<int> _reached = [];
    private readonly PriorityQueue<int, double> _queue = new();
    private double[] _least = [];
    private ChangedPieces? _changed;

    /// <summary>
    /// Least sum of forward voltages in volts on the ways from one piece to another that pass a junction at all, whatever insulation they pass
    /// too; infinite when there is none, or none below what a meter puts across open leads (Dijkstra, Numerische Mathematik 1, 1959, 269-271).
    /// </summary>
    /// <param name="changed">The pieces that a change leaves; a piece from 1 has the number of islands less one added to its own. Null for the islands as they were.</param>
    /// <param name="from">A piece.</param>
    /// <param name="to">Another.</param>
    public double LeastVolts(ChangedPieces? changed, int from, int to)
    {
        _changed = changed;
        Clear();
        Reach(from, passed: false, 0);
        while (_queue.TryDequeue(out var at, out var volts))
        {
            if (at == StateOf(to, passed: true))
                return volts;
            if (volts <= _least[at])
                StepFrom(at / 2, at % 2 == 1, volts);
        }

        return double.PositiveInfinity;
    }

    private static int StateOf(int piece, bool passed) => (2 * piece) + (passed ? 1 : 0);

    private void Clear()
    {
        foreach (var state in _reached)
            _least[state] = double.PositiveInfinity;
        _reached.Clear();
        _queue.Clear();
        var (before, count) = (_least.Length, StateOf(strays.Network.Islands.Count + (_changed?.Count ?? 0), passed: false));
        if (before >= count)
            return;
        Array.Resize(ref _least, count);
        Array.Fill(_least, double.PositiveInfinity, before, count - before);
    }

    private void StepFrom(int piece, bool passed, double volts)
    {
        if (piece < strays.Network.Islands.Count)
        {
            foreach (var end in strays.EndsOf(piece))
                StepAlong(end, piece, passed, volts);
            return;
        }

        var runs = _changed!.Runs;
        for (var run = 0; run < runs.Count; run++)
            if (NumberOf(runs[run].Piece) == piece)
                foreach (var end in strays.EndsIn(runs[run].Start, runs[run].End))
                    if (PieceRun.Holding(runs, end.Place) == run)
                        StepAlong(end, piece, passed, volts);
    }

    private void StepAlong(StrayEnd end, int piece, bool passed, double volts)
    {
        if ((end.IsInsulation || end.IsFirst) && PieceAt(end.Other) is var other && other != piece)
            Reach(other, passed || !end.IsInsulation, volts + end.ForwardVolts);
    }

    private int NumberOf(int piece) => strays.Network.Islands.Count + piece - 1;

    private int PieceAt(int place) => _changed?.AtPlace(place) is > 0 and var piece ? NumberOf(piece) : strays.IslandAt(place);

    private void Reach(int piece, bool passed, double volts)
    {
        var state = StateOf(piece, passed);
        if (volts >= ElementBand.OpenCircuitVolts || _least[state] <= volts)
            return;
        if (double.IsPositiveInfinity(_least[state]))
            _reached.Add(state);
        _least[state] = volts;
        _queue.Enqueue(state, volts);
    }
}
