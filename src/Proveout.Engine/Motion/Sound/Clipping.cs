namespace Proveout.Engine.Motion;

/// <summary>Finds flat tops at the end of the scale.</summary>
internal static class Clipping
{
    /// <summary>Share of a tenth of a second beyond which the wave is too cut to be trusted (from memory).</summary>
    public const double TooMuch = 0.2;

    private const double BlockSeconds = 0.1;

    // Two neighbours may touch the end by chance; three equal ones in a row are cut.
    private const int ShortestRun = 3;

    /// <summary>The largest share of any tenth of a second that stands at the end of the scale.</summary>
    public static double WorstShare(double[] samples, double rate, SampleForm form)
    {
        var block = (int)Math.Max(1, BlockSeconds * rate);
        var counts = new int[(samples.Length / block) + 1];
        var run = 0;
        for (var index = 0; index < samples.Length; index++)
        {
            run = !form.IsAtLimit(samples[index]) ? 0 : run > 0 && samples[index] == samples[index - 1] ? run + 1 : 1;
            if (run >= ShortestRun)
                counts[index / block] += run == ShortestRun ? ShortestRun : 1;
        }

        return counts.Max() / (double)Math.Min(block, samples.Length);
    }
}
