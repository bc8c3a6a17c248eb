using MathNet.Numerics.IntegralTransforms;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>The parts of the pitch finder against what others wrote.</summary>
public sealed class SoundOracleTests
{
    [Fact]
    public void The_period_of_a_sine_is_what_the_method_gives_by_hand()
    {
        // 110.3 Hz at 8 kHz, window 1024: lag 73, refined 72.52957 (computed with numpy from the equations of de Cheveigne and Kawahara 2002).
        double[] samples = [.. Enumerable.Range(0, 1124).Select(index => Math.Sin(2 * Math.PI * 110.3 * index / 8000))];
        var difference = Periodicity.Difference(new SoundBand(samples, 8000, 2000), new Stretch(0, 1124), 88);
        Assert.Equal(72.52957, Periodicity.Period(difference)!.Value, 2);
        Assert.Equal(110.3, 8000 / Periodicity.Period(difference)!.Value, 1);
    }

    [Theory]
    [InlineData(45)]
    [InlineData(110)]
    [InlineData(290)]
    public void An_independent_library_hears_the_same_pitch(double hertz)
    {
        // NWaves 0.9.6, its own YIN, on the free vibration alone; it has no uncertainty, so one percent is asked.
        var pluck = new SyntheticPluck(hertz) { NoiseRatioDecibels = 30, DecaySeconds = 0.4 };
        var samples = pluck.Samples();
        var ring = samples.Skip((int)(0.32 * 44_100)).Take(16_384).Select(sample => (float)sample).ToArray();
        var independent = NWaves.Features.Pitch.FromYin(ring, 44_100, 0, ring.Length, 30, 600);
        var own = PitchFinder.Find(pluck.Recording()).Value!.FundamentalHertz;
        Assert.Equal(independent, own, 0.01 * own);
    }

    [Fact]
    public void The_power_spectrum_is_that_of_an_independent_transform()
    {
        // MathNet.Numerics 5.0.0, complex Fourier transform of the same windowed, padded stretch.
        double[] samples = [.. Enumerable.Range(0, 1000).Select(index => Math.Sin(0.3 * index) + (0.2 * Math.Cos(1.1 * index)))];
        var spectrum = Spectrum.Of(new SoundBand(samples, 8000, 2000), new Stretch(0, 1000));
        double[] window = [.. Enumerable.Range(0, 1000).Select(index => (index + 0.5) / 1000).Select(place => Math.Pow(Math.Sin(Math.PI / 2 * (place < 0.15 ? place / 0.15 : (1 - place) / 0.85)), 2))];
        var padded = new System.Numerics.Complex[4096];
        for (var index = 0; index < 1000; index++)
            padded[index] = window[index] * samples[index];
        Fourier.Forward(padded, FourierOptions.NoScaling);
        var norm = window.Sum(weight => weight * weight);
        Assert.All(Enumerable.Range(0, 2048), bin => Assert.Equal(padded[bin].Magnitude * padded[bin].Magnitude / norm, spectrum.Power[bin], 9));
    }
}
