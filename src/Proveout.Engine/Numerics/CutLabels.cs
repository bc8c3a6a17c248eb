using System.Numerics;

namespace Proveout.Engine.Numerics;

/// <summary>Tells in a few operations that several resistors taken out of loops part no island.</summary>
/// <remarks>
/// A random number for each resistor outside the search tree, and for each inside it the exclusive or of those whose loops it lies on: the labels of the resistors that cross any cut
/// cancel. So where no exclusive or of the labels of some resistors is zero, no cut is among them, for sure; labels of 64 bits that cancel by chance only cause a look that was not needed
/// (Pritchard and Thurimella, ACM Transactions on Algorithms 7 (2011) 46).
/// </remarks>
internal sealed class CutLabels
{
    private const int Bits = 64;

    private readonly ulong[] _labels;

    /// <summary>Labels the resistors of a network.</summary>
    public CutLabels(ResistorNetwork network)
    {
        var bridges = network.Bridges;
        _labels = new ulong[network.EdgeCount];
        var crossing = new ulong[network.NodeCount];
        for (var edge = 0; edge < network.EdgeCount; edge++)
        {
            var (a, b) = (network.EdgeOf(edge).A, network.EdgeOf(edge).B);
            if (bridges.EdgeAbove(a) == edge || bridges.EdgeAbove(b) == edge)
                continue;
            _labels[edge] = Scattered(edge);
            crossing[a] ^= _labels[edge];
            crossing[b] ^= _labels[edge];
        }

        // Those below a node come after it in the search.
        for (var number = network.NodeCount - 1; number >= 0; number--)
            if (bridges.NodeAt(number) is var node && bridges.EdgeAbove(node) is >= 0 and var edge)
            {
                _labels[edge] = crossing[node];
                crossing[bridges.Above(node)] ^= crossing[node];
            }
    }

    /// <summary>False when the resistors of loops that changes take away part nothing, even all together.</summary>
    public bool MayPart(List<EdgeChange> changes)
    {
        // Gaussian elimination over two elements; a basis label stands at the place of its highest bit.
        Span<ulong> basis = stackalloc ulong[Bits];
        foreach (var change in changes)
        {
            // A bridge has no loop, and is seen in the graph.
            if (!change.TakesAway || _labels[change.Edge] == 0)
                continue;
            var label = _labels[change.Edge];
            while (label != 0 && basis[BitOperations.Log2(label)] is > 0 and var known)
                label ^= known;
            if (label == 0)
                return true;
            basis[BitOperations.Log2(label)] = label;
        }

        return false;
    }

    // Steele, Lea and Flood, OOPSLA 2014 (SplitMix64): numbers in a row become numbers without visible order, the same ones each time.
    private static ulong Scattered(int edge)
    {
        var number = ((ulong)edge + 1) * 0x9E3779B97F4A7C15;
        number = (number ^ (number >> 30)) * 0xBF58476D1CE4E5B9;
        number = (number ^ (number >> 27)) * 0x94D049BB133111EB;
        return number ^ (number >> 31);
    }
}
