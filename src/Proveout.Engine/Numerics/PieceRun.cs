using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>A run of the search order of <see cref="Bridges"/>, without the runs inside it.</summary>
/// <param name="Start">Its first place.</param>
/// <param name="End">One past its last place.</param>
/// <param name="Piece">The piece that it belongs to, from 1.</param>
internal readonly record struct PieceRun(int Start, int End, int Piece)
{
    /// <summary>The innermost run that holds a place, of runs of which the latest comes first; -1 when none does.</summary>
    /// <remarks>Runs lie inside or beside each other: the first one that holds it is the innermost.</remarks>
    public static int Holding(List<PieceRun> runs, int place)
    {
        var span = CollectionsMarshal.AsSpan(runs);
        for (var run = 0; run < span.Length; run++)
            if (span[run].Start <= place && place < span[run].End)
                return run;
        return -1;
    }

    /// <summary>The innermost run around another, of runs of which the latest comes first; -1 when there is none.</summary>
    public static int Around(List<PieceRun> runs, int run)
    {
        for (var around = run + 1; around < runs.Count; around++)
            if (runs[around].End >= runs[run].End)
                return around;
        return -1;
    }

    /// <summary>Numbers the pieces that joined runs make, and lists a node of each.</summary>
    public static void Number(List<PieceRun> runs, DisjointSets joined, Bridges bridges, List<int> firstOfPiece)
    {
        Span<int> numbers = stackalloc int[runs.Count];
        firstOfPiece.Clear();
        for (var run = 0; run < runs.Count; run++)
        {
            ref var number = ref numbers[joined.RootOf(run)];
            if (number == 0)
            {
                firstOfPiece.Add(bridges.NodeAt(runs[run].Start));
                number = firstOfPiece.Count;
            }

            runs[run] = runs[run] with { Piece = number };
        }
    }
}
