using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>How well a probe repeats.</summary>
internal static class ProbePart
{
    // σ of 5 µm good, 10 µm acceptable (common practice).
    private const double UsableMillimetres = 0.010;

    public static FramePart? Of(NamedText repeats, double meanWithin, List<Diagnostic> problems)
    {
        var lines = repeats.Text.Split('\n').Where(line => line.Trim() is { Length: > 0 } text && text[0] != '#').Select(line => DelimitedText.ReadGrid(line, repeats.Name)).ToArray();
        double[][] groups = [.. lines.Where(line => line.Value is not null).Select(line => line.Value![0].Where(double.IsFinite).ToArray())];
        problems.AddRange(lines.SelectMany(line => line.Diagnostics));
        double[] readings = [.. groups.SelectMany(group => group)];
        if (problems.Count > 0)
            return null;
        if (ProbeSeries.Of(readings) is not { } series)
        {
            problems.Add(new Diagnostic("too-few-readings", new SourcePlace(repeats.Name, 0, 0), "Fewer than two repeated readings were given.", "Probe the same place ten times."));
            return null;
        }

        var between = ProbeGroups.Of(groups);
        // Relative uncertainty of a standard deviation from n readings: 1 / √(2 (n − 1)) (JCGM 100:2008, E.4.3).
        var deviation = new Uncertain(series.DeviationMillimetres, series.DeviationMillimetres / Math.Sqrt(2.0 * (series.Count - 1)));
        var judged = Judged.Of(deviation, UsableMillimetres);
        return new FramePart(
            [
                SheetFigures.Of("Probe: standard deviation", deviation, "mm"),
                SheetFigures.Of("Probe: range", series.RangeMillimetres, "mm"),
                .. series.DriftMillimetres is { } drift ? (SheetFigure[])[SheetFigures.Of("Probe: drift from first to last", drift, "mm")] : [],
                .. between is not null ? (SheetFigure[])[SheetFigures.Of("Probe: repeatability within groups", between.RepeatabilityMillimetres, "mm"), SheetFigures.Of("Probe: reproducibility between groups", between.ReproducibilityMillimetres, "mm")] : [],
                SheetFigures.Of("Readings to average", series.SamplesFor(meanWithin), ""),
            ],
            [.. Findings(series, readings, judged)],
            [],
            series.Count < 10 ? ["With fewer than ten readings the standard deviation itself is uncertain by a quarter or more (JCGM 100:2008, table E.1)."] : [],
            judged == true && !series.IsDrifting && series.Outlier is null);
    }

    private static IEnumerable<string> Findings(ProbeSeries series, double[] readings, bool? judged)
    {
        if (series.Outlier is { } odd)
            yield return string.Create(CultureInfo.InvariantCulture, $"Reading {odd + 1} ({readings[odd]:0.####} mm) does not belong to the others (Grubbs' test, 5 %): look for its cause before you leave it out.");
        if (series.IsDrifting)
            yield return "The readings drift: warm up longer, or look for something that slips.";
        if (judged is null)
            yield return "Whether the probe repeats within 0.01 mm cannot be told from so few readings: take more at the same place.";
        else if (judged == false)
            yield return "The probe scatters more than 0.01 mm: see that its mount is stiff and its tip clean.";
        else if (series.Outlier is null && !series.IsDrifting)
            yield return "The probe repeats well.";
    }
}
