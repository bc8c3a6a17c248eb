namespace Proveout.Engine.Motion;

/// <summary>What can be drawn of a recording: few enough points for a page.</summary>
public static class SoundPictures
{
    /// <summary>The wave as lowest and highest sample of each of so many equal stretches.</summary>
    /// <param name="recording">The recording.</param>
    /// <param name="columns">How many stretches.</param>
    public static IReadOnlyList<(double Seconds, double Low, double High)> Wave(Recording recording, int columns)
    {
        ArgumentNullException.ThrowIfNull(recording);
        var count = Math.Min(columns, recording.Samples.Count);
        return [.. Enumerable.Range(0, count).Select(column =>
        {
            var (from, to) = ((int)((long)column * recording.Samples.Count / count), (int)((column + 1L) * recording.Samples.Count / count));
            var (low, high) = (double.MaxValue, double.MinValue);
            for (var index = from; index < to; index++)
                (low, high) = (Math.Min(low, recording.Samples[index]), Math.Max(high, recording.Samples[index]));
            return ((from + to) / 2.0 / recording.RateHertz, low, high);
        })];
    }

    /// <summary>The spectrum of the stretch that the pitch was found in, in decibels below its highest value, from 0 Hz to a little above the partials.</summary>
    /// <param name="recording">The recording.</param>
    /// <param name="pitch">What was found in it.</param>
    /// <param name="columns">How many values; each is the highest of its stretch.</param>
    /// <param name="lowestDecibels">Nothing below this is drawn.</param>
    public static IReadOnlyList<(double Hertz, double Decibels)> Spectrum(Recording recording, PluckedPitch pitch, int columns, double lowestDecibels = -60)
    {
        ArgumentNullException.ThrowIfNull(pitch);
        var band = SoundBand.Of(recording);
        var spectrum = Motion.Spectrum.Of(band, new Stretch((int)(pitch.StartSeconds * band.RateHertz), Math.Min(band.Samples.Length, (int)(pitch.EndSeconds * band.RateHertz))));
        var highest = Math.Min(band.HighestHertz, 1.15 * Math.Max(4 * pitch.FundamentalHertz, pitch.Partials.Max(partial => partial.Hertz)));
        var bins = Math.Max(columns, (int)(highest / spectrum.BinHertz));
        var top = spectrum.Power.Take(bins).Max();
        return [.. Enumerable.Range(0, columns).Select(column =>
        {
            var (from, to) = ((int)((long)column * bins / columns), (int)((column + 1L) * bins / columns));
            var power = spectrum.Power[from..Math.Max(from + 1, to)].Max();
            return ((from + to) / 2.0 * spectrum.BinHertz, Math.Max(lowestDecibels, 10 * Math.Log10((power / top) + 1e-30)));
        })];
    }
}
