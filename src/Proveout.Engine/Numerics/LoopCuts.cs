using System.Numerics;

namespace Proveout.Engine.Numerics;

/// <summary>The cuts that resistors taken out of loops make together, by their <see cref="CutLabels"/>. Reused from change to change by one thread.</summary>
/// <remarks>
/// The choices of resistors whose labels cancel are the cuts among them, and form a vector space over two elements; one cut of a basis after the other is found by Gaussian elimination. Two
/// nodes are parted just when the way between them in the search tree crosses some cut of the basis an odd number of times. So each cut is given a random number, and each resistor the
/// exclusive or of the numbers of the cuts that it is in: along a way these add up to what tells the parts from each other.
/// </remarks>
internal sealed class LoopCuts(ResistorNetwork network)
{
    private const int BitsAWord = 64;
    private const int LabelBits = 128;

    private readonly List<(int Edge, ulong Sides)> _taken = [];
    private ulong[] _choices = [];
    private int _words;

    /// <summary>The resistors taken out of loops, each with what a step across it adds to the label of a part.</summary>
    public List<(int Edge, ulong Sides)> Taken => _taken;

    /// <summary>True when the resistors that changes take out of loops part an island.</summary>
    public bool Find(List<EdgeChange> changes)
    {
        _taken.Clear();
        foreach (var change in changes)
            if (change.TakesAway && network.CutLabels.Of(change.Edge) != UInt128.Zero)
                _taken.Add((change.Edge, 0));
        return _taken.Count > 1 && Eliminate();
    }

    private bool Eliminate()
    {
        _words = (_taken.Count + BitsAWord - 1) / BitsAWord;
        if (_choices.Length < _taken.Count * _words)
            _choices = new ulong[2 * _taken.Count * _words];
        _choices.AsSpan(0, _taken.Count * _words).Clear();
        Span<UInt128> reduced = stackalloc UInt128[LabelBits];
        Span<int> rowOf = stackalloc int[LabelBits];
        var cuts = 0UL;
        for (var row = 0; row < _taken.Count; row++)
        {
            var label = network.CutLabels.Of(_taken[row].Edge);
            ChoiceOf(row)[row / BitsAWord] = 1UL << (row % BitsAWord);
            while (label != UInt128.Zero && reduced[Highest(label)] is var known && known != UInt128.Zero)
            {
                Add(rowOf[Highest(label)], row);
                label ^= known;
            }

            if (label == UInt128.Zero)
                Mark(row, CutLabels.Scattered(cuts++));
            else
                (reduced[Highest(label)], rowOf[Highest(label)]) = (label, row);
        }

        return cuts > 0;
    }

    private Span<ulong> ChoiceOf(int row) => _choices.AsSpan(row * _words, _words);

    private void Add(int row, int to)
    {
        for (var word = 0; word < _words; word++)
            ChoiceOf(to)[word] ^= ChoiceOf(row)[word];
    }

    private void Mark(int row, ulong cut)
    {
        for (var place = 0; place <= row; place++)
            if ((ChoiceOf(row)[place / BitsAWord] >> (place % BitsAWord) & 1) != 0)
                _taken[place] = (_taken[place].Edge, _taken[place].Sides ^ cut);
    }

    private static int Highest(UInt128 label) =>
        (ulong)(label >> BitsAWord) is > 0 and var upper ? BitsAWord + BitOperations.Log2(upper) : BitOperations.Log2((ulong)label);
}
