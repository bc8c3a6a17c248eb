namespace Proveout.Engine.Electrical;

/// <summary>The ways that current can take from piece to piece of a network: through junctions from anode to cathode, through insulation either way.</summary>
/// <remarks>
/// Current from red to black runs along paths (flow decomposition) on which no element has a voltage against it; through a junction it drops the
/// junction's forward voltage or more. Safe for use from several threads.
/// </remarks>
internal sealed class JunctionWays
{
    private readonly Dictionary<int, List<(int To, double Volts, bool IsJunction)>> _steps = [];

    /// <summary>Sorts junctions and insulation by the pieces that they join.</summary>
    public JunctionWays(StrayPaths paths, ReadOnlySpan<int> pieceOf)
    {
        foreach (var (a, b, _) in paths.Insulation)
        {
            Add(pieceOf[a], pieceOf[b], 0, isJunction: false);
            Add(pieceOf[b], pieceOf[a], 0, isJunction: false);
        }

        foreach (var (anode, cathode, volts) in paths.Junctions)
            Add(pieceOf[anode], pieceOf[cathode], volts, isJunction: true);
    }

    /// <summary>
    /// Least sum of forward voltages in volts on the ways from one piece to another that pass a junction at all, whatever insulation they pass
    /// too; infinite when there is none, or none below what a meter puts across open leads (Dijkstra, Numerische Mathematik 1, 1959, 269-271).
    /// </summary>
    public double LeastVolts(int from, int to)
    {
        var least = new Dictionary<(int Piece, bool Passed), double> { [(from, false)] = 0 };
        var queue = new PriorityQueue<(int Piece, bool Passed), double>([((from, false), 0)]);
        while (queue.TryDequeue(out var at, out var volts))
        {
            if (at == (to, true))
                return volts;
            if (volts > least[at] || !_steps.TryGetValue(at.Piece, out var steps))
                continue;
            foreach (var (piece, forward, isJunction) in steps)
                Reach((piece, at.Passed || isJunction), volts + forward, least, queue);
        }

        return double.PositiveInfinity;
    }

    private static void Reach(
        (int Piece, bool Passed) at, double volts, Dictionary<(int Piece, bool Passed), double> least, PriorityQueue<(int Piece, bool Passed), double> queue)
    {
        if (volts >= ElementBand.OpenCircuitVolts || (least.TryGetValue(at, out var known) && known <= volts))
            return;
        least[at] = volts;
        queue.Enqueue(at, volts);
    }

    private void Add(int from, int to, double volts, bool isJunction)
    {
        if (from == to)
            return;
        if (!_steps.TryGetValue(from, out var list))
            _steps[from] = list = [];
        list.Add((to, volts, isJunction));
    }
}
