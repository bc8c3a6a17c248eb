using System.Numerics;
using System.Runtime.CompilerServices;

namespace Proveout.Engine.Numerics;

/// <summary>Volts of the nodes of one block while one ampere flows through it. Reused from block to block by one thread.</summary>
internal sealed class BlockVolts
{
    private double[] _high = [];
    private double[] _low = [];

    /// <summary>Takes the volts of a current from one node to another.</summary>
    /// <param name="entry">Those of a current from where it enters to the top of the block; null when it enters there.</param>
    /// <param name="exit">The same of where it leaves.</param>
    public void Take(BlockColumn? entry, BlockColumn? exit)
    {
        var count = (entry ?? exit)!.High.Length;
        MakeRoom(count);
        if (entry is null)
            Subtract(exit!.High, exit.Low);
        else if (exit is null)
            Copy(entry);
        else
            Subtract(entry, exit);
    }

    /// <summary>Takes the volts of a block of two nodes.</summary>
    /// <param name="ohms">Its resistance, below zero for a current from the top to the other node.</param>
    public void Take(DoubleDouble ohms)
    {
        MakeRoom(2);
        (_high[0], _high[1]) = (0, ohms.High);
        (_low[0], _low[1]) = (0, ohms.Low);
    }

    /// <summary>Volts of the node at one place over that at another, right to the last digits of a double however nearly equal the two are.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Between(int one, int other) => _high[one] - _high[other] + (_low[one] - _low[other]);

    private void MakeRoom(int count)
    {
        if (_high.Length < count)
            (_high, _low) = (new double[2 * count], new double[2 * count]);
    }

    private void Copy(BlockColumn column)
    {
        column.High.CopyTo(_high.AsSpan());
        column.Low.CopyTo(_low.AsSpan());
    }

    private void Subtract(double[] high, double[] low)
    {
        for (var place = 0; place < high.Length; place++)
            (_high[place], _low[place]) = (-high[place], -low[place]);
    }

    // Each difference of leading parts with its rounding error (Knuth, The Art of Computer Programming vol. 2, 4.2.2).
    // What is compiled ahead of time knows no vectors of the processor at hand, so that this is compiled at its first call, and at once as well as can be.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Subtract(BlockColumn one, BlockColumn other)
    {
        var (count, place) = (one.High.Length, 0);
        for (; place <= count - Vector<double>.Count; place += Vector<double>.Count)
        {
            var (left, right) = (new Vector<double>(one.High, place), new Vector<double>(other.High, place));
            var high = left - right;
            var shadow = high - left;
            high.CopyTo(_high, place);
            (left - (high - shadow) - (right + shadow) + (new Vector<double>(one.Low, place) - new Vector<double>(other.Low, place))).CopyTo(_low, place);
        }

        for (; place < count; place++)
        {
            var volts = one[place] - other[place];
            (_high[place], _low[place]) = (volts.High, volts.Low);
        }
    }
}
