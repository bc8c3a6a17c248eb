using System.Numerics;
using System.Runtime.InteropServices;

namespace Proveout.Engine.Motion;

/// <summary>
/// Squared magnitudes of the Fourier transform of real samples, for one length, with tables made once: a complex transform of half the length (Cooley and Tukey 1965, radix 2, in place),
/// its halves taken apart (Press and others, Numerical Recipes, 12.3). Own code because the library at hand computes sines anew for every segment and makes new arrays for each.
/// </summary>
internal sealed class RealTransform
{
    private readonly int _half;
    private readonly double[] _real;
    private readonly double[] _imaginary;
    private readonly double[] _cosine;
    private readonly double[] _sine;
    private readonly double[][] _stageCosine;
    private readonly double[][] _stageSine;
    private readonly int[] _reversed;

    /// <param name="length">A power of two, at least 4.</param>
    public RealTransform(int length)
    {
        if (length < 4 || (length & (length - 1)) != 0)
            throw new ArgumentOutOfRangeException(nameof(length), length, "The length is a power of two.");
        (Length, _half) = (length, length / 2);
        (_real, _imaginary) = (new double[_half], new double[_half]);
        (_cosine, _sine) = Turns(length, _half);
        (_stageCosine, _stageSine) = ([], []);
        for (var size = 2; size <= _half; size *= 2)
        {
            var (cosine, sine) = Turns(size, size / 2);
            (_stageCosine, _stageSine) = ([.. _stageCosine, cosine], [.. _stageSine, sine]);
        }

        _reversed = Reversed(_half);
    }

    /// <summary>Samples of one transform.</summary>
    public int Length { get; }

    /// <summary>Squared magnitudes at 0 to half the sampling rate.</summary>
    /// <param name="samples">As many as <see cref="Length"/>.</param>
    /// <param name="squares">One more than half as many.</param>
    public void Squares(ReadOnlySpan<double> samples, Span<double> squares)
    {
        for (var index = 0; index < _half; index++)
        {
            var place = _reversed[index];
            _real[place] = samples[2 * index];
            _imaginary[place] = samples[(2 * index) + 1];
        }

        for (var (stage, size) = (0, 2); size <= _half; (stage, size) = (stage + 1, size * 2))
            Combine(size, _stageCosine[stage], _stageSine[stage]);
        squares[0] = Square(_real[0] + _imaginary[0]);
        squares[_half] = Square(_real[0] - _imaginary[0]);
        for (var bin = 1; bin < _half; bin++)
            squares[bin] = TakenApart(bin);
    }

    private double TakenApart(int bin)
    {
        var (real, imaginary) = (_real[bin], _imaginary[bin]);
        var (otherReal, otherImaginary) = (_real[_half - bin], _imaginary[_half - bin]);
        var (evenReal, evenImaginary) = ((real + otherReal) / 2, (imaginary - otherImaginary) / 2);
        var (oddReal, oddImaginary) = ((imaginary + otherImaginary) / 2, (otherReal - real) / 2);
        return Square(evenReal + (_cosine[bin] * oddReal) + (_sine[bin] * oddImaginary)) + Square(evenImaginary + (_cosine[bin] * oddImaginary) - (_sine[bin] * oddReal));
    }

    private void Combine(int size, double[] cosine, double[] sine)
    {
        var half = size / 2;
        for (var start = 0; start < _half; start += size)
        {
            var lowReal = _real.AsSpan(start, half);
            var highReal = _real.AsSpan(start + half, half);
            var lowImaginary = _imaginary.AsSpan(start, half);
            var highImaginary = _imaginary.AsSpan(start + half, half);
            var wide = half - (half % Vector<double>.Count);
            Wide(lowReal, highReal, lowImaginary, highImaginary, cosine, sine);
            // Both are powers of two: either all fits, or none.
            for (var index = wide; index < half; index++)
            {
                var real = (cosine[index] * highReal[index]) + (sine[index] * highImaginary[index]);
                var imaginary = (cosine[index] * highImaginary[index]) - (sine[index] * highReal[index]);
                highReal[index] = lowReal[index] - real;
                highImaginary[index] = lowImaginary[index] - imaginary;
                lowReal[index] += real;
                lowImaginary[index] += imaginary;
            }
        }
    }

    // Several at once, in the same order of operations.
    private static void Wide(Span<double> lowReals, Span<double> highReals, Span<double> lowImaginaries, Span<double> highImaginaries, Span<double> cosines, Span<double> sines)
    {
        var lowReal = MemoryMarshal.Cast<double, Vector<double>>(lowReals);
        var highReal = MemoryMarshal.Cast<double, Vector<double>>(highReals);
        var lowImaginary = MemoryMarshal.Cast<double, Vector<double>>(lowImaginaries);
        var highImaginary = MemoryMarshal.Cast<double, Vector<double>>(highImaginaries);
        var cosine = MemoryMarshal.Cast<double, Vector<double>>(cosines);
        var sine = MemoryMarshal.Cast<double, Vector<double>>(sines);
        for (var index = 0; index < lowReal.Length; index++)
        {
            var real = (cosine[index] * highReal[index]) + (sine[index] * highImaginary[index]);
            var imaginary = (cosine[index] * highImaginary[index]) - (sine[index] * highReal[index]);
            highReal[index] = lowReal[index] - real;
            highImaginary[index] = lowImaginary[index] - imaginary;
            lowReal[index] += real;
            lowImaginary[index] += imaginary;
        }
    }

    private static (double[] Cosine, double[] Sine) Turns(int size, int count) => (
        [.. Enumerable.Range(0, count).Select(index => Math.Cos(2 * Math.PI * index / size))],
        [.. Enumerable.Range(0, count).Select(index => Math.Sin(2 * Math.PI * index / size))]);

    private static int[] Reversed(int size)
    {
        var reversed = new int[size];
        for (var index = 1; index < size; index++)
            reversed[index] = (reversed[index / 2] / 2) + ((index & 1) == 1 ? size / 2 : 0);
        return reversed;
    }

    private static double Square(double value) => value * value;
}
