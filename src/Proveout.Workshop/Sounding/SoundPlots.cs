using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>The plots of a recording.</summary>
internal static class SoundPlots
{
    private const int Columns = 240;
    private const double LowestDecibels = -60;

    public static IReadOnlyList<PlotView> Of(string name, Recording recording, PluckedPitch pitch) => [Wave(name, recording, pitch), Spectrum(name, recording, pitch)];

    private static PlotView Wave(string name, Recording recording, PluckedPitch pitch)
    {
        var wave = SoundPictures.Wave(recording, Columns);
        var reach = 1.05 * wave.Max(point => Math.Max(Math.Abs(point.Low), Math.Abs(point.High)));
        return new PlotView(
            $"Sound of the {name}",
            Text($"{recording.Seconds:0.0} s of sound; the pitch was read from {pitch.StartSeconds:0.00} s to {pitch.EndSeconds:0.00} s."),
            new PlotAxis("time, s", 0, recording.Seconds),
            new PlotAxis("sample, full scale 1", -reach, reach),
            [new PlotLine([.. wave.Select(point => (point.Seconds, point.High)), .. wave.Reverse().Select(point => (point.Seconds, point.Low))], IsFilled: true)],
            [new PlotMark(pitch.StartSeconds, "from"), new PlotMark(pitch.EndSeconds, "to")]);
    }

    private static PlotView Spectrum(string name, Recording recording, PluckedPitch pitch)
    {
        var spectrum = SoundPictures.Spectrum(recording, pitch, Columns, LowestDecibels);
        var last = spectrum[^1].Hertz;
        return new PlotView(
            $"Spectrum of the {name}",
            Text($"The fundamental at {pitch.FundamentalHertz:0.0} Hz; partials at {string.Join(", ", pitch.Partials.Select(partial => partial.Hertz.ToString("0.0", CultureInfo.InvariantCulture)))} Hz."),
            new PlotAxis("frequency, Hz", 0, last),
            new PlotAxis("power below the highest, dB", LowestDecibels, 0),
            [new PlotLine([.. spectrum])],
            [.. pitch.Partials.Where(partial => partial.Hertz < last).Select(partial => new PlotMark(partial.Hertz, Text($"{partial.Number}")))]);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
