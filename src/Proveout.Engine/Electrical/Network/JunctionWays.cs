using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>
/// The ways that current can take from piece to piece of a network: through junctions from anode to cathode, through insulation either way. One thread's own.
/// </summary>
/// <remarks>
/// Current from red to black runs along paths (flow decomposition) on which no element has a voltage against it; through a junction it drops the
/// junction's forward voltage or more. The search runs from both ends (Pohl, Machine Intelligence 6 (1971) 127-140), always on from that piece on which less ends, for what hangs on a large one is
/// seldom needed. As every way passes a junction, the first one counts only by how much it has more than the lowest of the machine (Hart, Nilsson and Raphael, IEEE Transactions on Systems Science and Cybernetics 4 (1968) 100-107).
/// </remarks>
internal sealed class JunctionWays(StrayEnds strays)
{
    private readonly Side _onward = new();
    private readonly Side _back = new();
    private readonly List<(int Other, double ForwardVolts, bool LeadsOn)> _steps = [];
    private readonly double _lowest = strays.Volts is [var lowest, ..] ? lowest : double.PositiveInfinity;
    private ChangedPieces? _changed;
    private double _best;

    /// <summary>
    /// Least sum of forward voltages in volts on the ways from one piece to another that pass a junction at all, whatever insulation they pass
    /// too; infinite when there is none, or none below what a meter puts across open leads.
    /// </summary>
    /// <param name="changed">The pieces that a change leaves; a piece from 1 has the number of islands less one added to its own. Null for the islands as they were.</param>
    /// <param name="from">A piece.</param>
    /// <param name="to">Another.</param>
    public double LeastVolts(ChangedPieces? changed, int from, int to)
    {
        _changed = changed;
        _best = double.PositiveInfinity;
        var count = StateOf(strays.Network.Islands.Count + (changed?.Count ?? 0), passed: false);
        _onward.Clear(count);
        _back.Clear(count);
        Reach(_onward, _back, StateOf(from, passed: false), 0);
        Reach(_back, _onward, StateOf(to, passed: true), 0);
        while (_onward.TryPeek(out var here, out var volts) && _back.TryPeek(out var there, out var voltsThere) && volts + voltsThere < _best)
            if (EndsOn(here / 2) <= EndsOn(there / 2))
                StepOnward(_onward.Take(), volts);
            else
                StepBack(_back.Take(), voltsThere);
        return _best + _lowest is var least && least < ElementBand.OpenCircuitVolts ? least : double.PositiveInfinity;
    }

    private static int StateOf(int piece, bool passed) => (2 * piece) + (passed ? 1 : 0);

    private void StepOnward(int state, double volts)
    {
        var (piece, passed) = (state / 2, state % 2 == 1);
        foreach (var (other, forward, leadsOn) in StepsFrom(piece))
            if (forward == 0)
                Reach(_onward, _back, StateOf(other, passed), volts);
            else if (leadsOn)
                Reach(_onward, _back, StateOf(other, passed: true), volts + (passed ? forward : forward - _lowest));
    }

    private void StepBack(int state, double volts)
    {
        var (piece, passed) = (state / 2, state % 2 == 1);
        foreach (var (other, forward, leadsOn) in StepsFrom(piece))
            if (forward == 0)
            {
                Reach(_back, _onward, StateOf(other, passed), volts);
            }
            else if (passed && !leadsOn)
            {
                Reach(_back, _onward, StateOf(other, passed: true), volts + forward);
                Reach(_back, _onward, StateOf(other, passed: false), volts + forward - _lowest);
            }
    }

    // What ends on a piece leads to, with the forward voltage of a junction, or zero, and whether current may run on along it.
    private List<(int Other, double ForwardVolts, bool LeadsOn)> StepsFrom(int piece)
    {
        _steps.Clear();
        if (piece < strays.Network.Islands.Count)
        {
            foreach (var end in strays.EndsOf(piece))
                AddStep(end, piece);
            return _steps;
        }

        var runs = _changed!.Runs;
        for (var run = 0; run < runs.Count; run++)
            if (NumberOf(runs[run].Piece) == piece)
                foreach (var end in strays.EndsIn(runs[run].Start, runs[run].End))
                    if (PieceRun.Holding(runs, end.Place) == run)
                        AddStep(end, piece);
        return _steps;
    }

    private void AddStep(in StrayEnd end, int piece)
    {
        if (PieceAt(end.Other) is var other && other != piece)
            _steps.Add((other, end.ForwardVolts, end.IsInsulation || end.IsFirst));
    }

    private void Reach(Side side, Side beyond, int state, double volts)
    {
        if (volts + _lowest >= ElementBand.OpenCircuitVolts || !side.TryReach(state, volts))
            return;
        _best = Math.Min(_best, volts + beyond.VoltsOf(state));
    }

    private int EndsOn(int piece)
    {
        if (piece < strays.Network.Islands.Count)
            return strays.EndsOf(piece).Length;
        var ends = 0;
        foreach (var run in _changed!.Runs)
            if (NumberOf(run.Piece) == piece)
                ends += strays.EndsIn(run.Start, run.End).Length;
        return ends;
    }

    private int NumberOf(int piece) => strays.Network.Islands.Count + piece - 1;

    private int PieceAt(int place) => _changed?.AtPlace(place) is > 0 and var piece ? NumberOf(piece) : strays.IslandAt(place);

    /// <summary>What a search from one end has reached.</summary>
    private sealed class Side
    {
        private readonly List<int> _reached = [];
        private readonly PriorityQueue<int, double> _queue = new();
        private double[] _least = [];

        /// <summary>Least volts to a state so far; infinite when it is not reached.</summary>
        public double VoltsOf(int state) => _least[state];

        /// <summary>Starts anew.</summary>
        public void Clear(int count)
        {
            foreach (var state in _reached)
                _least[state] = double.PositiveInfinity;
            _reached.Clear();
            _queue.Clear();
            var before = _least.Length;
            if (before >= count)
                return;
            Array.Resize(ref _least, count);
            Array.Fill(_least, double.PositiveInfinity, before, count - before);
        }

        /// <summary>False when the state was reached with no more volts before.</summary>
        public bool TryReach(int state, double volts)
        {
            if (_least[state] <= volts)
                return false;
            if (double.IsPositiveInfinity(_least[state]))
                _reached.Add(state);
            _least[state] = volts;
            _queue.Enqueue(state, volts);
            return true;
        }

        /// <summary>The state with the least volts that is not left yet; false when there is none.</summary>
        public bool TryPeek(out int state, out double volts)
        {
            while (_queue.TryPeek(out state, out volts) && volts > _least[state])
                _queue.Dequeue();
            return _queue.Count > 0;
        }

        /// <summary>Takes it.</summary>
        public int Take() => _queue.Dequeue();
    }
}
