using System.Text;

namespace Proveout.Workshop;

/// <summary>Makes of what an analysis found what the record keeps of it.</summary>
public static class Measurements
{
    /// <summary>What the name of a figure begins with that a controller is to be told.</summary>
    public const string ToSet = "to set: ";

    /// <summary>Of a frame, a plate, an error budget, a test piece, a shaken axis, or the log of a heater.</summary>
    public static MeasurementRequest Of(string analysis, SheetView sheet, KeepRequest keep)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Request(
            analysis,
            string.Join(" ", [.. sheet.Findings, .. sheet.Seen is { } seen ? Sentences(seen) : []]),
            [.. sheet.ToSet.Select(figure => Figure(ToSet + figure.Name, figure.Figure, figure.Unit)), .. sheet.Figures.Select(figure => Figure(figure.Name, figure.Figure, figure.Unit))],
            keep);
    }

    /// <summary>Of the tension of one belt or a pair.</summary>
    public static MeasurementRequest Of(SoundingView view, KeepRequest keep)
    {
        ArgumentNullException.ThrowIfNull(view);
        List<KeptFigure> figures = [];
        foreach (var belt in view.Belts)
        {
            figures.Add(Figure($"{belt.Name}: note", belt.Note.Frequency, "Hz"));
            if (belt.Force is { } force)
                figures.Add(Figure($"{belt.Name}: force", force, "N"));
        }

        if (view.Pair is { } pair)
            figures.Add(Figure("left over right, of their mean", pair.DifferencePercent, "%"));
        string[] sentences = [.. view.Pair is { } both ? (string[])[both.Sentence] : [], .. view.Target.Select(target => target.Sentence), .. view.Turns];
        return Request("tension", string.Join(" ", sentences), figures, keep);
    }

    /// <summary>Of a motor and its axis.</summary>
    public static MeasurementRequest Of(MotorView view, KeepRequest keep)
    {
        ArgumentNullException.ThrowIfNull(view);
        List<KeptFigure> figures = [new($"{ToSet}steps for each millimetre", view.Steps.StepsByMillimetre, 0, "1/mm"), new("travel for each turn", view.Steps.MillimetresByTurn, 0, "mm")];
        if (view.Current is { } current)
            figures.AddRange([new($"{ToSet}current, r.m.s.", current.RmsAmperes, 0, "A"), new("the same as peak", current.PeakAmperes, 0, "A")]);
        if (view.Curve is { HoldsCurrent: true } curve)
            figures.Add(new("torque falls above", curve.CornerMillimetresPerSecond, 0, "mm/s"));
        if (view.Load is { } load)
            figures.AddRange([new("torque needed", load.NeededNewtonMetres, 0, "N·m"), new("torque there at the highest speed", load.AvailableNewtonMetres, 0, "N·m")]);
        if (view.Resonance is { } resonance)
            figures.Add(new("lowest first resonance", resonance.LowestHertz, 0, "Hz"));
        return Request("motor", view.Load?.Sentence ?? "", figures, keep);
    }

    /// <summary>Of the belts of a machine: their lengths, and what was seen of them.</summary>
    public static MeasurementRequest Of(BeltsView view, SeenView? seen, KeepRequest keep)
    {
        ArgumentNullException.ThrowIfNull(view);
        KeptFigure[] figures = [.. view.Belts.Where(belt => double.IsFinite(belt.CutMm)).Select(belt => new KeptFigure($"{belt.Name}: cut", belt.CutMm, 0, "mm"))];
        string[] sentences =
        [
            .. view.Findings.Count > 0 ? view.Findings.Select(finding => finding.Sentence) : ["No rule finds anything in the paths."],
            .. seen is null ? [] : Sentences(seen),
        ];
        return Request("belts", string.Join(" ", sentences), figures, keep);
    }

    private static IEnumerable<string> Sentences(SeenView seen)
    {
        yield return $"Seen: {string.Join("; ", seen.Reported)}.";
        foreach (var suspect in seen.Suspects.Take(3))
            yield return $"Suspected, {ShareWords.Of(suspect.Probability)}: {suspect.Sentence}";
    }

    /// <summary>A table or list that was handed over, as the file that is kept.</summary>
    public static MeasuredFile FileOf(NamedText text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new(NameOf(text.Name), "text/csv", Encoding.UTF8.GetBytes(text.Text));
    }

    /// <summary>A recording, as the file that is kept.</summary>
    public static MeasuredFile FileOf(SoundFile sound)
    {
        ArgumentNullException.ThrowIfNull(sound);
        return new(NameOf(sound.Name), "audio/wav", sound.Bytes);
    }

    private static MeasurementRequest Request(string analysis, string summary, IReadOnlyList<KeptFigure> figures, KeepRequest keep)
    {
        ArgumentNullException.ThrowIfNull(keep);
        return new(analysis, keep.Title.Trim() is { Length: > 0 } title ? title : TitleOf(analysis), summary, figures, keep.Typed, keep.Files.Count > 0 ? keep.Files[0] : null, keep.Person, keep.Key)
        {
            Further = [.. keep.Files.Skip(1)],
        };
    }

    private static string TitleOf(string analysis) => analysis switch
    {
        "tension" => "Belt tension",
        "motor" => "Motor and axis",
        "level" => "Plate",
        "belts" => "Belts",
        "piece" => "First piece",
        "resonance" => "Resonance",
        "heat-log" => "Log of a heater",
        "budget" => "Error budget to the nozzle",
        _ => "Frame",
    };

    private static KeptFigure Figure(string name, FigureView figure, string unit) => new(name, figure.Value, double.IsFinite(figure.Expanded) ? figure.Expanded : 0, unit);

    // Folders of the computer on which it was measured are nobody's business.
    private static string NameOf(string path) => path[(path.LastIndexOfAny(['/', '\\']) + 1)..];
}
