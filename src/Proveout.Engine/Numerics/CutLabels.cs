namespace Proveout.Engine.Numerics;

/// <summary>A random number for each resistor of a loop, such that those of the resistors which cross a cut cancel.</summary>
/// <remarks>
/// A resistor outside the search tree has a number of its own, one inside it the exclusive or of those whose loops it lies on; a bridge has zero. So resistors hold a cut just when an exclusive or of some of
/// their labels is zero (Pritchard and Thurimella, ACM Transactions on Algorithms 7 (2011) 46). That labels of 128 bits cancel by chance is out of the question: for 2³⁰ choices of resistors once in 2⁹⁸ times.
/// </remarks>
internal sealed class CutLabels
{
    private readonly UInt128[] _labels;

    /// <summary>Labels the resistors of a network.</summary>
    public CutLabels(ResistorNetwork network)
    {
        var bridges = network.Bridges;
        _labels = new UInt128[network.EdgeCount];
        var crossing = new UInt128[network.NodeCount];
        for (var edge = 0; edge < network.EdgeCount; edge++)
        {
            var (a, b) = (network.EdgeOf(edge).A, network.EdgeOf(edge).B);
            if (bridges.EdgeAbove(a) == edge || bridges.EdgeAbove(b) == edge)
                continue;
            _labels[edge] = new UInt128(Scattered((2 * (ulong)edge) + 1), Scattered(2 * (ulong)edge));
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

    /// <summary>The label of a resistor; zero for a bridge.</summary>
    public UInt128 Of(int edge) => _labels[edge];

    /// <summary>A number without visible order for each of numbers in a row, the same one each time (SplitMix64: Steele, Lea and Flood, OOPSLA 2014).</summary>
    public static ulong Scattered(ulong place)
    {
        var number = (place + 1) * 0x9E3779B97F4A7C15;
        number = (number ^ (number >> 30)) * 0xBF58476D1CE4E5B9;
        number = (number ^ (number >> 27)) * 0x94D049BB133111EB;
        return number ^ (number >> 31);
    }
}
