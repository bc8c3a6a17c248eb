using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>The plots of a resonance.</summary>
internal static class ResonancePlots
{
    private const int Columns = 240;
    private const double LowestDecibels = -50;

    public static IReadOnlyList<PlotView> Of(ShakenAxis axis, ShakenAxis? after, ShaperAdvice advice, ResonanceAsked asked)
    {
        PlotView spectrum = Spectrum(axis, after, advice, asked.Demand);
        return advice.Best is null ? [spectrum] : [spectrum, Residual(axis, advice, asked.Demand)];
    }

    private static PlotView Spectrum(ShakenAxis axis, ShakenAxis? after, ShaperAdvice advice, ShaperDemand demand)
    {
        var (from, to) = (Math.Min(5, demand.LowestHertz), Math.Min(demand.HighestHertz, axis.Density.BinHertz * (axis.Density.Values.Count - 1)));
        var top = InBand(axis.Density, from, to).Max(point => point.Value) is > 0 and var most ? most : 1;
        List<PlotLine> lines = [Line(axis.Density, from, to, top, _ => 1)];
        if (after is not null)
            lines.Add(Line(after.Density, from, to, top, _ => 1));
        else if (advice.Best is { } best)
            lines.Add(Line(axis.Density, from, to, top, hertz => Math.Pow(best.Shaper.Residual(hertz, 0), 2)));
        var other = after is not null ? " The second line is after the change." : advice.Best is { } used ? $" The second line is what {ShaperWords.Name(used.Shaper.Kind)} would leave." : "";
        var found = axis.Modes.Count == 0 ? "No resonance stands out." : $"Resonances at {string.Join(", ", axis.Modes.OrderBy(mode => mode.Hertz.Value).Select(mode => SensibleDigits.Of(mode.Hertz, "Hz")))}.";
        return new PlotView(
            $"Spectrum of axis {axis.Name}",
            $"{found}{other}",
            new PlotAxis("frequency, Hz", 0, to),
            new PlotAxis("power density below the highest, dB", LowestDecibels, 0),
            lines,
            [.. axis.Modes.OrderBy(mode => mode.Hertz.Value).Select(mode => new PlotMark(mode.Hertz.Value, mode.Hertz.Value.ToString("0", CultureInfo.InvariantCulture)))]);
    }

    private static PlotView Residual(ShakenAxis axis, ShaperAdvice advice, ShaperDemand demand)
    {
        var best = advice.Best!;
        var damping = best.Shaper.DampingRatio;
        var (from, to) = (0.3 * best.Shaper.Hertz, Math.Max(1.8 * best.Shaper.Hertz, 1.1 * advice.Modes.Max(mode => mode.Hertz.Value)));
        var others = advice.Judgements.Where(other => other != best).Take(2).ToArray();
        PlotLine Of(ShaperJudgement judgement) => new([.. Enumerable.Range(0, Columns + 1).Select(at => from + (at * (to - from) / Columns)).Select(hertz => (hertz, 100 * judgement.Shaper.Residual(hertz, damping)))]);
        return new PlotView(
            $"Vibration left on axis {axis.Name}",
            Text($"What {ShaperWords.Name(best.Shaper.Kind)} leaves of a resonance, by its frequency: {100 * best.Shaper.Residual(best.Shaper.Hertz, damping):0.0} % at {best.Shaper.Hertz:0.0} Hz; the line across is the tolerance, {100 * demand.Tolerance:0.#} %. Dashed: {string.Join(", ", others.Select(other => ShaperWords.Name(other.Shaper.Kind)))}."),
            new PlotAxis("frequency of the resonance, Hz", from, to),
            new PlotAxis("vibration left, %", 0, 100),
            [Of(best), new PlotLine([(from, 100 * demand.Tolerance), (to, 100 * demand.Tolerance)]), .. others.Select(Of)],
            [.. advice.Modes.Select(mode => new PlotMark(mode.Hertz.Value, mode.Hertz.Value.ToString("0", CultureInfo.InvariantCulture)))]);
    }

    // The highest of each column, so that no peak falls between two.
    private static PlotLine Line(PowerDensity density, double from, double to, double top, Func<double, double> share)
    {
        var points = InBand(density, from, to).Select(point => (point.Hertz, Value: point.Value * share(point.Hertz))).ToArray();
        var column = Math.Max(1, (points.Length + Columns - 1) / Columns);
        return new([.. points.Chunk(column).Select(part => part.MaxBy(point => point.Value)).Select(point => (point.Hertz, Math.Max(LowestDecibels, 10 * Math.Log10(Math.Max(1e-30, point.Value / top)))))]);
    }

    private static IEnumerable<(double Hertz, double Value)> InBand(PowerDensity density, double from, double to) =>
        density.Values.Select((value, bin) => (Hertz: bin * density.BinHertz, Value: value)).Where(point => point.Hertz >= from && point.Hertz <= to);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
