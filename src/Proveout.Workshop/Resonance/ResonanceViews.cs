using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Puts what was found into the form that faces show.</summary>
internal static class ResonanceViews
{
    // Gantries ring mostly from 30 to 80 Hz (common practice; shared trade facts, D7).
    private const double UsuallyFromHertz = 30;

    public static ResonanceStudyView Of(IReadOnlyList<ShakenAxis> axes, IReadOnlyList<ShakenAxis> after, ResonanceAsked asked)
    {
        List<ShakenDirection> directions = [];
        List<ShaperAdvice> advices = [];
        foreach (var axis in axes)
        {
            var then = after.FirstOrDefault(other => other.Name == axis.Name);
            // After a change the machine is shaped for what it is now.
            var current = then ?? axis;
            var advice = ShaperAdvice.For(current.Modes, current.Density, asked.Demand);
            advices.Add(advice);
            directions.Add(new ShakenDirection(
                axis.Name,
                axis.Record.Name,
                axis.Record.RateHertz,
                axis.Record.Seconds,
                axis.Density.BinHertz,
                axis.Density.Segments,
                [.. current.Modes.Select(View)],
                [.. advice.Judgements.Select(judgement => View(judgement, judgement == advice.Best, asked.Demand))],
                ShaperWords.Advice(axis.Name, advice, asked.Demand),
                then is null ? [] : [.. ModeChange.Between(axis.Modes, then.Modes).Select(change => ChangeWords.Of(axis.Name, change))],
                ResonancePlots.Of(axis, then, advice, asked)));
        }

        return new(directions, Sheet(axes, after, directions, advices, asked));
    }

    private static SheetView Sheet(IReadOnlyList<ShakenAxis> axes, IReadOnlyList<ShakenAxis> after, List<ShakenDirection> directions, List<ShaperAdvice> advices, ResonanceAsked asked)
    {
        var changes = directions.SelectMany(direction => direction.Changes).ToArray();
        return new SheetView(
            [.. directions.SelectMany(Figures)],
            [.. directions.SelectMany(direction => direction.Changes.Select(change => change.Sentence).Append(direction.Advice)), .. Together(directions)],
            [.. Steps(directions)],
            [.. axes.Concat(after).SelectMany(axis => axis.Notes(axes.All(other => other.Record == axes[0].Record))).Concat(axes.Concat(after).Select(axis => axis.Record).Distinct().SelectMany(record => record.Notes.Select(note => $"{record.Name}: {note}"))), .. Apart(directions, asked)],
            advices.All(advice => advice.Best is null || advice.MeetsTolerance) && !changes.Any(change => change.Place is "new" || change.Strength == "grown"))
        {
            ToSet = [.. directions.SelectMany(ToSet)],
        };
    }

    private static IEnumerable<SheetFigure> Figures(ShakenDirection direction)
    {
        foreach (var mode in direction.Modes)
        {
            yield return new($"Axis {direction.Name}: resonance", "Hz", mode.Hertz);
            if (mode.DampingRatio is { } damping)
                yield return new(string.Create(CultureInfo.InvariantCulture, $"Axis {direction.Name}: damping ratio at {mode.Hertz.Value:0.0} Hz"), "", damping);
        }

        if (direction.Shapers.FirstOrDefault(shaper => shaper.IsBest) is { } best)
            yield return SheetFigures.Of($"Axis {direction.Name}: vibration left at most", best.ResidualPercent, "%");
    }

    private static IEnumerable<SheetFigure> ToSet(ShakenDirection direction)
    {
        if (direction.Shapers.FirstOrDefault(shaper => shaper.IsBest) is not { } best)
            yield break;
        yield return SheetFigures.Of($"Axis {direction.Name}: {best.Name} made for", best.Hertz, "Hz");
        yield return SheetFigures.Of($"Axis {direction.Name}: {best.Name} damping ratio", best.DampingRatio, "");
        yield return SheetFigures.Of($"Axis {direction.Name}: highest acceleration", best.HighestAcceleration, "m/s²");
    }

    private static IEnumerable<string> Together(List<ShakenDirection> directions)
    {
        var best = directions.Where(direction => direction.Name is "x" or "y").Select(direction => direction.Shapers.FirstOrDefault(shaper => shaper.IsBest)).OfType<ShaperView>().ToArray();
        if (best.Length == 2)
            yield return string.Create(CultureInfo.InvariantCulture, $"Both axes together: corners keep the error up to {best.Min(shaper => shaper.HighestAcceleration):0.##} m/s², the lower of the two.");
    }

    private static IEnumerable<string> Apart(List<ShakenDirection> directions, ResonanceAsked asked)
    {
        var best = directions.Where(direction => direction.Name is "x" or "y").Select(direction => direction.Shapers.FirstOrDefault(shaper => shaper.IsBest)).OfType<ShaperView>().ToArray();
        if (best.Length == 2 && asked.PathSpeed * Math.Abs(best[0].DelayMilliseconds - best[1].DelayMilliseconds) / 2 is var millimetres && millimetres >= 0.01)
            yield return string.Create(CultureInfo.InvariantCulture, $"The shapers delay the two axes by {Math.Abs(best[0].DelayMilliseconds - best[1].DelayMilliseconds):0.0} ms differently: unless the controller evens that out, lines at 45° lie {Math.Ceiling(100 * millimetres) / 100:0.00} mm aside at {1000 * asked.PathSpeed:0} mm/s. One shaper on both axes avoids it, where it suits both.");
    }

    private static IEnumerable<string> Steps(List<ShakenDirection> directions)
    {
        foreach (var direction in directions)
            foreach (var mode in direction.Modes.Where(mode => mode.Doubt.Length > 0).Take(1))
                yield return $"Axis {direction.Name}, {mode.Hertz.Words}: the damping cannot be told. {mode.Doubt}";
        foreach (var direction in directions.Where(direction => direction.Shapers.Count > 0 && direction.Modes.MaxBy(mode => mode.TravelMicrometres) is { } main && main.Hertz.Value + main.Hertz.Expanded < UsuallyFromHertz))
            yield return $"Axis {direction.Name} rings below {UsuallyFromHertz} Hz, lower than gantries usually do: see belt tension, screws of frame and gantry, and what the machine stands on, before a shaper hides it.";
        if (directions.Any(direction => direction.Shapers.Count > 0))
            yield return "Set shapers and acceleration at the controller, then record again in the same way: what is left should be what is stated here.";
    }

    private static ModeView View(VibrationMode mode) => new(
        Figure(mode.Hertz, "Hz"),
        mode.DampingRatio is { } damping ? Figure(damping, "") : null,
        mode.Doubt,
        mode.Acceleration,
        1e6 * mode.Travel,
        mode.Blows);

    private static ShaperView View(ShaperJudgement judgement, bool isBest, ShaperDemand demand)
    {
        var shaper = judgement.Shaper;
        return new ShaperView(
            ShaperWords.Name(shaper.Kind),
            ShaperWords.FullName(shaper.Kind),
            shaper.Hertz,
            shaper.DampingRatio,
            [.. shaper.Impulses.Select(impulse => (impulse.Share, 1000 * impulse.Seconds))],
            1000 * shaper.DurationSeconds,
            1000 * shaper.DelaySeconds,
            1000 * shaper.SpreadSeconds,
            ShaperWords.Up(100 * judgement.Residual),
            ShaperWords.Up(100 * judgement.SpectrumShare),
            ShaperWords.Down(judgement.HighestAcceleration),
            Math.Ceiling((1e6 * CornerRounding.Error(shaper, demand.CornerSpeed, 0)) - 1e-6),
            isBest);
    }

    private static FigureView Figure(Uncertain value, string unit) => new(value.Value, value.Expanded, SensibleDigits.Of(value, unit));
}
