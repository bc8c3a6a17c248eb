namespace Proveout.Engine.Motion;

/// <summary>Finds tones in a spectrum, and what stands against them.</summary>
internal static class Peaks
{
    // An exponentially distributed power exceeds 12 times its mean once in 160,000; some 1,500 independent bins are searched.
    private const double LeastRatio = 12;

    // 50 dB below the highest nothing is believed: the window's own skirts.
    private const double LeastShare = 1e-5;

    // A top must rise this much above the dip beside it.
    private const double LeastProminence = 4;

    // A tone that was as strong as a third of this before the stroke belongs to the room.
    private const double RoomFactor = 4;
    private const double NoiseBandHertz = 250;
    private const int Most = 24;

    /// <summary>The tones of a ring, strongest first.</summary>
    /// <param name="spectrum">Spectrum of the ring.</param>
    /// <param name="room">Spectrum of what was heard before, in the same bins; null when nothing was.</param>
    /// <param name="lowest">Lowest frequency.</param>
    /// <param name="highest">Highest frequency.</param>
    public static IReadOnlyList<Peak> In(Spectrum spectrum, Spectrum? room, double lowest, double highest)
    {
        var noise = Noise(spectrum, highest);
        var power = spectrum.Power;
        var (first, last) = (Math.Max(2, (int)(lowest / spectrum.BinHertz)), Math.Min(power.Length - 3, (int)(highest / spectrum.BinHertz)));
        var least = LeastShare * Enumerable.Range(first, Math.Max(1, last - first)).Max(bin => power[bin]);
        List<Peak> peaks = [];
        for (var bin = first; bin <= last; bin++)
        {
            if (power[bin] <= power[bin - 1] || power[bin] < power[bin + 1] || power[bin] < least)
                continue;
            var around = noise[Math.Min(noise.Length - 1, (int)(bin * spectrum.BinHertz / (NoiseBandHertz / 5)))];
            if (power[bin] >= LeastRatio * around && Prominence(power, bin, first, last) >= LeastProminence && !IsOfRoom(spectrum, room, bin))
                peaks.Add(Of(spectrum, bin, around));
        }

        return [.. peaks.OrderByDescending(peak => peak.Power).Take(Most)];
    }

    private static Peak Of(Spectrum spectrum, int bin, double noise)
    {
        var ratio = spectrum.Power[bin] / noise;
        // Least variance of a tone's frequency in white noise (Rife and Boorstyn 1974): 1 / (2 pi T sqrt(2 ratio)) with T the r.m.s. duration, here 1.6 half-widths (Hann: 1.56).
        var width = Width(spectrum, bin);
        return new(spectrum.TopHertz(bin), spectrum.Power[bin], ratio, 1.6 * width / Math.Sqrt(2 * ratio));
    }

    // Half the width at half power.
    private static double Width(Spectrum spectrum, int bin)
    {
        var power = spectrum.Power;
        var (left, right) = (bin, bin);
        while (left > 0 && power[left] > power[bin] / 2)
            left--;
        while (right + 1 < power.Length && power[right] > power[bin] / 2)
            right++;
        return spectrum.BinHertz * (right - left) / 2.0;
    }

    private static double Prominence(double[] power, int bin, int first, int last)
    {
        var (left, right) = (power[bin], power[bin]);
        for (var at = bin - 1; at >= first && power[at] <= power[bin]; at--)
            left = Math.Min(left, power[at]);
        for (var at = bin + 1; at <= last && power[at] <= power[bin]; at++)
            right = Math.Min(right, power[at]);
        return power[bin] / Math.Max(left, right);
    }

    private static bool IsOfRoom(Spectrum spectrum, Spectrum? room, int bin)
    {
        if (room is null)
            return false;
        var reach = (int)(1 / spectrum.Seconds / spectrum.BinHertz);
        for (var at = Math.Max(0, bin - reach); at <= Math.Min(room.Power.Length - 1, bin + reach); at++)
            if (RoomFactor * room.Power[at] > spectrum.Power[bin])
                return true;
        return false;
    }

    // Median of the power around, which the few bins of tones do not move; the mean of noise is that over ln 2.
    private static double[] Noise(Spectrum spectrum, double highest)
    {
        var step = NoiseBandHertz / 5;
        return [.. Enumerable.Range(0, (int)(highest / step) + 2).Select(block =>
        {
            var from = Math.Max(0, (int)(((block * step) - (NoiseBandHertz / 2)) / spectrum.BinHertz));
            var to = Math.Min(spectrum.Power.Length, (int)(((block * step) + step + (NoiseBandHertz / 2)) / spectrum.BinHertz));
            if (to - from < 2)
                return double.Epsilon;
            var around = spectrum.Power[from..to];
            Array.Sort(around);
            return Math.Max(double.Epsilon, around[around.Length / 2] / Math.Log(2));
        })];
    }
}
