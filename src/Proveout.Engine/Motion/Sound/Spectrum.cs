using System.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>Power over frequency of one stretch of sound, padded so that its peaks are smooth.</summary>
internal sealed class Spectrum
{
    // Rise of the window as a share of the stretch: quick, so that the loud beginning of a ring counts.
    private const double RiseShare = 0.15;
    private const int Padding = 4;

    private Spectrum(double[] power, double binHertz, double seconds) => (Power, BinHertz, Seconds) = (power, binHertz, seconds);

    /// <summary>Power at each multiple of <see cref="BinHertz"/>, in units of our own.</summary>
    public double[] Power { get; }

    /// <summary>Distance of two values, finer than the stretch resolves.</summary>
    public double BinHertz { get; }

    /// <summary>Length of the stretch.</summary>
    public double Seconds { get; }

    /// <summary>The spectrum of a stretch.</summary>
    public static Spectrum Of(SoundBand band, Stretch stretch, int leastLength = 0)
    {
        var length = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(leastLength, Padding * stretch.Length));
        var padded = new double[length];
        var sum = 0.0;
        for (var index = 0; index < stretch.Length; index++)
        {
            var weight = Window((index + 0.5) / stretch.Length);
            padded[index] = weight * band.Samples[stretch.Start + index];
            sum += weight * weight;
        }

        var bins = FftSharp.FFT.ForwardReal(padded);
        var power = new double[bins.Length];
        for (var bin = 0; bin < power.Length; bin++)
            power[bin] = ((bins[bin].Real * bins[bin].Real) + (bins[bin].Imaginary * bins[bin].Imaginary)) / sum;
        return new(power, band.RateHertz / length, stretch.Length / band.RateHertz);
    }

    /// <summary>Power at any frequency, between two values along a line.</summary>
    public double At(double hertz)
    {
        var place = hertz / BinHertz;
        var bin = (int)place;
        return bin < 0 || bin + 1 >= Power.Length ? 0 : Power[bin] + ((place - bin) * (Power[bin + 1] - Power[bin]));
    }

    /// <summary>The top near a bin that is higher than its neighbours: a parabola through the logarithms (Smith and Serra 1987, from memory).</summary>
    public double TopHertz(int bin)
    {
        var (left, middle, right) = (Math.Log(Power[bin - 1] + double.Epsilon), Math.Log(Power[bin] + double.Epsilon), Math.Log(Power[bin + 1] + double.Epsilon));
        var bend = left - (2 * middle) + right;
        return BinHertz * (bin + (bend < 0 ? Math.Clamp((left - right) / (2 * bend), -0.5, 0.5) : 0));
    }

    private static double Window(double place)
    {
        var half = place < RiseShare ? place / RiseShare : (1 - place) / (1 - RiseShare);
        var sine = Math.Sin(Math.PI / 2 * half);
        return sine * sine;
    }
}
