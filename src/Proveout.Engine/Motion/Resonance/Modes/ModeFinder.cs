using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>Finds the resonances of one direction, with frequency and damping.</summary>
public static class ModeFinder
{
    // A peak narrower than this many bins at half its power is as wide as the window makes it.
    private const double NarrowestBins = 0.75;

    // Beyond this the damping is no figure any more.
    private const double MostRelative = 0.35;
    private const double LargestDamping = 0.5;

    // Two peaks so near are one that the fit found twice.
    private const double SameShare = 0.02;

    // Clocks that stamp samples (from memory); one that only counts samples of a sensor can be off by percents.
    private const double ClockShare = 1e-3;

    /// <summary>The resonances between two frequencies, highest peak first.</summary>
    /// <param name="record">The recording.</param>
    /// <param name="direction">The direction.</param>
    /// <param name="density">Its spectrum, or the transfer made of it.</param>
    /// <param name="excitation">How the machine was made to vibrate.</param>
    /// <param name="lowest">Lowest frequency.</param>
    /// <param name="highest">Highest frequency.</param>
    public static IReadOnlyList<VibrationMode> Find(AccelerationRecord record, DirectionRecord direction, PowerDensity density, Excitation excitation, double lowest, double highest)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(direction);
        ArgumentNullException.ThrowIfNull(density);
        List<VibrationMode> modes = [];
        foreach (var peak in PeakSearch.In(density, lowest, Math.Min(highest, 0.45 * record.RateHertz)))
        {
            var mode = Of(record, direction, density, peak, excitation);
            if (modes.All(other => Math.Abs(other.Hertz.Value - mode.Hertz.Value) > SameShare * mode.Hertz.Value))
                modes.Add(mode);
        }

        return modes;
    }

    private static VibrationMode Of(AccelerationRecord record, DirectionRecord direction, PowerDensity density, PeakPlace peak, Excitation excitation)
    {
        var top = peak.Bin * density.BinHertz;
        var height = new Uncertain(density.Values[peak.Bin], density.Values[peak.Bin] / Math.Sqrt(density.IndependentSegments));
        var fit = Fit(density, peak, excitation);
        if (excitation != Excitation.Drive && Ringing(record, direction, top, fit) is var (ringing, blows))
            return Judged(ringing.Hertz, ringing.DampingRatio, height, peak, density, blows);
        // Without a fit the top is known to the bin, whatever its shape.
        return fit is null
            ? new VibrationMode(Uncertain.Within(top, density.BinHertz), null, "The peak has not the shape of one resonance.", height, peak.Excess, 0)
            : Judged(fit.Hertz, fit.DampingRatio, height, peak, density, 0);
    }

    private static VibrationMode Judged(Uncertain hertz, Uncertain damping, Uncertain height, PeakPlace peak, PowerDensity density, int blows)
    {
        var bins = 2 * damping.Value * hertz.Value / density.BinHertz;
        var doubt = blows == 0 && bins < NarrowestBins
            ? Text($"The peak is no wider than the analysis shows ({density.BinHertz:0.##} Hz): record longer, or with a finer resolution.")
            : damping.Relative > MostRelative ? "Its width is too uncertain: record longer, or excite the machine more."
            : damping.Value > LargestDamping ? "It is too broad for one resonance."
            : "";
        // No top is known better than a fiftieth of a bin, nor than the clock that stamped the samples, whatever the fit says of itself.
        var frequency = new Uncertain(hertz.Value, Uncertain.Combine(hertz.Standard, density.BinHertz / 50, ClockShare / Math.Sqrt(3) * hertz.Value));
        return new VibrationMode(frequency, doubt.Length == 0 ? damping : null, doubt, height, peak.Excess, blows);
    }

    private static ResonanceFit? Fit(PowerDensity density, PeakPlace peak, Excitation excitation)
    {
        if (excitation != Excitation.NotTold)
            return ResonanceFit.Of(density, peak, excitation);
        var (force, drive) = (ResonanceFit.Of(density, peak, Excitation.Force), ResonanceFit.Of(density, peak, Excitation.Drive));
        return force is null || drive is null ? force ?? drive
            : new ResonanceFit(Both(force.Hertz, drive.Hertz), Both(force.DampingRatio, drive.DampingRatio), Both(force.Height, drive.Height));
    }

    // Either may be true, all between them equally likely.
    private static Uncertain Both(Uncertain one, Uncertain other) =>
        new((one.Value + other.Value) / 2, Uncertain.Combine(Math.Max(one.Standard, other.Standard), (one.Value - other.Value) / 2 / Math.Sqrt(3)));

    private static (RingDown Ringing, int Blows)? Ringing(AccelerationRecord record, DirectionRecord direction, double top, ResonanceFit? fit)
    {
        RingDown[] heard = [.. direction.Rings.Select(ring => RingDown.Of(ring, record.RateHertz, fit?.Hertz.Value ?? top)).OfType<RingDown>()];
        // One that hears another resonance, or half of the blows and fewer, says nothing of this one.
        heard = [.. heard.Where(ring => Math.Abs(ring.Hertz.Value - top) < 0.1 * top && ring.DampingRatio.Value < LargestDamping)];
        return heard.Length > 0 && 2 * heard.Length >= direction.Rings.Count && RingDown.Together(heard) is { } together ? (together, heard.Length) : null;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
