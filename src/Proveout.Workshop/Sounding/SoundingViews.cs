using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Puts a sounding into the form that faces show.</summary>
internal static class SoundingViews
{
    public static SoundingView Of(SoundingFigures figures, HeardNote first, HeardNote? second)
    {
        var left = new MeasuredBelt(second is null ? "span" : "left belt", first, SpanOf(figures, figures.LeftMetres, first));
        var right = second is null ? null : new MeasuredBelt("right belt", second, SpanOf(figures, figures.RightMetres, second));
        MeasuredBelt[] belts = right is null ? [left] : [left, right];
        var pair = right is null ? null : PairOf(figures, left, right);
        return new SoundingView(
            [.. belts.Select(View)],
            pair,
            [.. belts.Select(belt => TargetOf(figures, belt)).OfType<TargetView>()],
            TurnAdvice.For(figures, belts, pair is { Verdict: "equal" }));
    }

    private static BeltSpan? SpanOf(SoundingFigures figures, Uncertain? metres, HeardNote note) =>
        metres is { } length && figures.Mass is { } mass ? new BeltSpan(length, mass, figures.Bending ?? note.Stiffness) : null;

    private static SoundedBelt View(MeasuredBelt belt)
    {
        var pitch = belt.Note.Pitch;
        return new SoundedBelt(
            belt.Name,
            new NoteView(
                Figure(belt.Note.Hertz, "Hz"),
                pitch?.Confidence,
                pitch?.PluckCount ?? 0,
                pitch?.Inharmonicity,
                pitch?.Partials.ToDictionary(partial => partial.Number, partial => partial.Hertz) ?? []),
            belt.Force is { } force ? Figure(force, "N") : null,
            [.. SoundingRemarks.Of(belt)],
            belt.Note is { Recording: { } recording, Pitch: { } heard } ? SoundPlots.Of(belt.Name, recording, heard) : []);
    }

    private static PairView PairOf(SoundingFigures figures, MeasuredBelt left, MeasuredBelt right)
    {
        // Without lengths the two are taken as equal, which the same position of the machine makes them.
        var pair = new BeltPair(left.Note.Hertz, right.Note.Hertz, figures.LeftMetres ?? new(1, 0), figures.RightMetres ?? new(1, 0));
        var difference = pair.Difference;
        var percent = Figure(new Uncertain(100 * difference.Value, 100 * difference.Standard), "%");
        var (verdict, words) = pair.Judge(figures.LimitShare) switch
        {
            PairVerdict.Equal => ("equal", "The two belts pull equally within the limit."),
            PairVerdict.LeftTighter => ("left-tighter", "The left belt is tighter. Tighten the right one or loosen the left one, then pluck both again."),
            PairVerdict.RightTighter => ("right-tighter", "The right belt is tighter. Tighten the left one or loosen the right one, then pluck both again."),
            _ => ("cannot-tell", "Whether the two are equal cannot be told: the uncertainty reaches over the limit. Pluck each a few times more in one recording, and measure both spans."),
        };
        var taken = figures.LeftMetres is null ? " Both spans are taken as equally long." : "";
        return new PairView(percent, verdict, string.Create(
            CultureInfo.InvariantCulture, $"{words} The force of the left one over the right one: {percent.Words}; limit {100 * figures.LimitShare:0.#} %.{taken}"));
    }

    private static TargetView? TargetOf(SoundingFigures figures, MeasuredBelt belt)
    {
        if (figures.TargetNewtons is not { } newtons || belt.Span is not { } span || belt.Force is not { } force)
            return null;
        var note = Figure(StringFormula.Frequency(span, new(newtons, 0)), "Hz");
        var (verdict, words) = TensionTarget.Around(newtons).Judge(force) switch
        {
            TensionVerdict.Right => ("right", "is as it should be"),
            TensionVerdict.TooLoose => ("too-loose", "is too loose"),
            TensionVerdict.TooTight => ("too-tight", "is too tight"),
            _ => ("cannot-tell", "may or may not be right: the uncertainty of its force reaches over the band"),
        };
        return new TargetView(belt.Name, newtons, note, verdict, string.Create(
            CultureInfo.InvariantCulture,
            $"The {belt.Name} {words}: {SensibleDigits.Of(force, "N")} against {newtons:0.##} N ± {100 * TensionTarget.UsualShare:0} %, at which it would sound {note.Words}."));
    }

    private static FigureView Figure(Uncertain value, string unit) => new(value.Value, value.Expanded, SensibleDigits.Of(value, unit));
}
