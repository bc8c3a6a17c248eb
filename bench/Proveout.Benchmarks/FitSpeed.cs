using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;
using Proveout.Engine.Numerics;

namespace Proveout.Benchmarks;

/// <summary>
/// Prints how long line and plane fits take against MathNet.Numerics, both in one run so that the ratio holds on any computer. Ours gives uncertainties and the share
/// of each reading that the others check beside the values; MathNet's gives the values.
/// </summary>
internal static class FitSpeed
{
    private const int Turns = 400;

    public static void Print(TextWriter output)
    {
        var random = new Random(20261128);
        foreach (var count in new[] { 10, 100, 1000 })
            Print(output, $"line through {count} readings", [.. Enumerable.Range(0, count).Select(index => new[] { 1, (double)index / count })], random);
        foreach (var side in new[] { 3, 5, 10, 20 })
            Print(output, $"plane through {side} x {side} heights", [.. from row in Enumerable.Range(0, side) from column in Enumerable.Range(0, side) select new[] { 1, (double)column / side, (double)row / side }], random);
    }

    private static void Print(TextWriter output, string name, double[][] design, Random random)
    {
        double[] observed = [.. design.Select(row => row.Sum() + (0.01 * random.NextDouble()))];
        var (matrix, vector) = (Matrix<double>.Build.DenseOfRowArrays(design), Vector<double>.Build.Dense(observed));
        var (found, rival) = (LeastSquares.Fit(design, observed)!.Values, MultipleRegression.QR(matrix, vector));
        var own = ProcessorTime.Of(Turns, () => found = LeastSquares.Fit(design, observed)!.Values).Processor;
        var general = ProcessorTime.Of(Turns, () => rival = MultipleRegression.QR(matrix, vector)).Processor;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: {1e6 * own:0.0} us of processor time, MathNet QR {1e6 * general:0.0} us, ratio {own / general:0.00}; values differ by {found.Zip(rival, (one, other) => Math.Abs(one - other)).Max():0.0e0}"));
    }
}
