using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>The pieces that a change leaves whose resistors taken out of loops part an island: runs of the search order of <see cref="Bridges"/>, finer than its sections. Reused from change to change by one thread.</summary>
/// <remarks>Within a section and one part of <see cref="LoopCuts"/> all hangs together; what is added or altered joins sections and parts to pieces.</remarks>
internal sealed class PieceRuns(ResistorNetwork network, LoopCuts cuts)
{
    private readonly List<PieceRun> _runs = [];
    private readonly List<(int Section, ulong Sides)> _parts = [];
    private readonly DisjointSets _joined = new();
    private readonly List<int> _firstOfPiece = [];

    /// <summary>The runs, latest first, so that the first one that holds a node is the innermost.</summary>
    public List<PieceRun> Runs => _runs;

    /// <summary>A node of each piece.</summary>
    public List<int> FirstOfPiece => _firstOfPiece;

    /// <summary>Finds the pieces.</summary>
    /// <param name="changes">The change, whose cuts were found.</param>
    /// <param name="sections">Runs that bridges which are cut or altered leave, latest first.</param>
    public void Find(List<EdgeChange> changes, List<PieceRun> sections)
    {
        _runs.Clear();
        _runs.AddRange(sections);
        foreach (var (edge, _) in cuts.Taken)
            if (BelowInTree(edge) is >= 0 and var node)
                _runs.Add(new PieceRun(network.Bridges.NumberOf(node), network.Bridges.EndOf(node), 0));
        _runs.Sort((one, two) => two.Start.CompareTo(one.Start));
        FindParts(sections);
        JoinParts();
        foreach (var change in changes)
            if (change.Edge < 0 || (!change.TakesAway && network.Bridges.Below(change.Edge) >= 0))
                _joined.Join(PieceRun.Holding(_runs, network.Bridges.NumberOf(change.A)), PieceRun.Holding(_runs, network.Bridges.NumberOf(change.B)));
        PieceRun.Number(_runs, _joined, network.Bridges, _firstOfPiece);
    }

    // The node of a resistor from which the search went on across it the other way; -1 for one outside the search tree.
    private int BelowInTree(int edge)
    {
        var (a, b) = (network.EdgeOf(edge).A, network.EdgeOf(edge).B);
        return network.Bridges.EdgeAbove(a) == edge ? a : network.Bridges.EdgeAbove(b) == edge ? b : -1;
    }

    // A run comes before those that hold it. Below a bridge the part is that of the node above it.
    private void FindParts(List<PieceRun> sections)
    {
        CollectionsMarshal.SetCount(_parts, _runs.Count);
        for (var run = _runs.Count - 1; run >= 0; run--)
        {
            var sides = PieceRun.Around(_runs, run) is >= 0 and var around ? _parts[around].Sides : 0;
            _parts[run] = (PieceRun.Holding(sections, _runs[run].Start), sides ^ SidesAbove(network.Bridges.NodeAt(_runs[run].Start)));
        }
    }

    private ulong SidesAbove(int node)
    {
        var above = network.Bridges.EdgeAbove(node);
        foreach (var (edge, sides) in cuts.Taken)
            if (edge == above)
                return sides;
        return 0;
    }

    private void JoinParts()
    {
        _joined.Reset(_runs.Count);
        for (var run = 0; run < _runs.Count; run++)
            for (var other = 0; other < run; other++)
                if (_parts[other] == _parts[run])
                    _joined.Join(run, other);
    }
}
