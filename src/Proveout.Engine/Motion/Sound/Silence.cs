namespace Proveout.Engine.Motion;

/// <summary>Tells a recording of nothing from one of something.</summary>
internal static class Silence
{
    // 80 dB below full scale: below what microphones of telephones hear in a quiet room (common practice).
    private const double Quietest = 1e-4;

    /// <summary>Root mean square about the mean.</summary>
    public static double Level(double[] samples)
    {
        var mean = samples.Average();
        return Math.Sqrt(samples.Average(sample => (sample - mean) * (sample - mean)));
    }

    /// <summary>True when nothing rises above the steps of the numbers or above <c>-80 dB</c>.</summary>
    public static bool IsIn(double[] samples, SampleForm form)
    {
        var mean = samples.Average();
        var peak = samples.Max(sample => Math.Abs(sample - mean));
        var step = form.IsFloat ? 0 : Math.ScaleB(1, 1 - form.Bits);
        return peak < Math.Max(Quietest, 2 * step);
    }
}
