using System.Numerics;
using MathNet.Numerics.IntegralTransforms;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class WelchTests
{
    [Fact]
    public void The_worked_example_comes_out_as_in_SciPy_and_Octave()
    {
        // scipy.signal.welch 1.10.1 and Octave's pwelch with the same settings (shared reference values, 10.1).
        double[] samples = [1, 2, 3, 4, 5, 6, 7, 8, 7, 6, 5, 4, 3, 2, 1, 0];
        var density = Average(8, samples).Result(16, 1);
        double[] expected = [0.09603074392, 0.5968133715, 0.06073031947, 0.005583614633, 0.0011914783];
        Assert.Equal(3, density.Segments);
        Assert.Equal(2, density.BinHertz);
        Assert.All(expected.Zip(density.Values), pair => Assert.Equal(pair.First, pair.Second, 1e-10));
    }

    [Fact]
    public void A_sine_has_the_density_that_is_known_by_hand()
    {
        // Amplitude 2 sqrt 2 at a bin: mean square 4 over 1.5 bins of 1000/256 Hz = 0.68267 at the top, a quarter of it on both sides.
        double[] samples = [.. Enumerable.Range(0, 8192).Select(index => 2 * Math.Sqrt(2) * Math.Sin(2 * Math.PI * 125 * index / 1000))];
        var density = Average(256, samples).Result(1000, 1);
        Assert.Equal(0.6826666667, density.Values[32], 1e-9);
        Assert.Equal(0.1706666667, density.Values[31], 1e-9);
        Assert.Equal(4, density.MeanSquare(0, 500), 1e-9);
    }

    [Theory]
    [InlineData(64, 1000)]
    [InlineData(256, 5000)]
    [InlineData(1024, 9001)]
    [InlineData(4, 37)]
    public void Segments_averaged_one_by_one_with_an_independent_transform_give_the_same(int length, int count)
    {
        // MathNet.Numerics 5.0.0.
        var samples = Noise(count, 7);
        var density = Average(length, samples).Result(3200, 1);
        double[] window = [.. Enumerable.Range(0, length).Select(index => 0.5 - (0.5 * Math.Cos(2 * Math.PI * index / length)))];
        var expected = new double[(length / 2) + 1];
        var segments = (count - (length / 2)) / (length / 2);
        for (var segment = 0; segment < segments; segment++)
        {
            var part = samples.AsSpan(segment * (length / 2), length).ToArray();
            var bins = part.Select((value, index) => new Complex(window[index] * (value - part.Average()), 0)).ToArray();
            Fourier.Forward(bins, FourierOptions.NoScaling);
            for (var bin = 0; bin < expected.Length; bin++)
                expected[bin] += bins[bin].Magnitude * bins[bin].Magnitude * (bin == 0 || bin == length / 2 ? 1 : 2) / (3200 * window.Sum(weight => weight * weight) * segments);
        }

        Assert.Equal(segments, density.Segments);
        Assert.All(expected.Zip(density.Values), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * (pair.First + 1e-9)));
    }

    [Theory]
    [InlineData(256)]
    [InlineData(2048)]
    public void The_density_adds_up_to_the_variance(int length)
    {
        // Parseval: exactly that of the windowed segments, and of a long stationary recording its own.
        var samples = Noise(400_000, 3);
        var average = Average(length, samples);
        var sum = average.Result(1000, 1).MeanSquare(0, 500);
        Assert.Equal(average.WindowedMeanSquare, sum, 1e-11);
        Assert.Equal(samples.Average(value => value * value) - Math.Pow(samples.Average(), 2), sum, 0.01);
    }

    [Fact]
    public void Samples_may_come_in_pieces_of_any_size_and_a_break_is_not_averaged_across()
    {
        var samples = Noise(5000, 5);
        var whole = Average(256, samples).Result(1000, 1);
        var pieces = new WelchAverage(256);
        var random = new Random(1);
        for (var at = 0; at < samples.Length;)
        {
            var length = Math.Min(random.Next(1, 700), samples.Length - at);
            pieces.Add(samples.AsSpan(at, length));
            at += length;
        }

        Assert.Equal(whole.Values, pieces.Result(1000, 1).Values);
        pieces.Break();
        pieces.Add(samples.AsSpan(0, 200));
        pieces.Break();
        pieces.Add(samples.AsSpan(0, 255));
        Assert.Equal(whole.Segments, pieces.Segments);
    }

    [Fact]
    public void The_scatter_of_an_average_is_that_of_its_independent_segments()
    {
        // 60 averages of white noise: the relative standard deviation of a bin is 1 / sqrt(independent segments).
        double[][] runs = [.. Enumerable.Range(0, 60).Select(seed => Average(128, Noise(128 * 20, seed)).Result(1000, 1).Values.ToArray())];
        var scatter = Enumerable.Range(4, 56).Average(bin => Math.Pow(Deviation([.. runs.Select(run => run[bin])]), 2));
        Assert.Equal(1 / Average(128, Noise(128 * 20, 1)).Result(1000, 1).IndependentSegments, scatter, 0.006);
    }

    private static double Deviation(double[] values) => Math.Sqrt(values.Sum(value => Math.Pow(value - values.Average(), 2)) / (values.Length - 1)) / values.Average();

    private static WelchAverage Average(int length, double[] samples)
    {
        var average = new WelchAverage(length);
        average.Add(samples);
        return average;
    }

    private static double[] Noise(int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => 0.4 + SyntheticShake.Gauss(random))];
    }
}
