using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>How far to turn a tensioner.</summary>
internal static class TurnAdvice
{
    // Nobody turns a screw more finely.
    private const double SmallestTurn = 0.125;

    /// <summary>A sentence for each screw; none for what is surely right.</summary>
    public static IReadOnlyList<string> For(SoundingFigures figures, IReadOnlyList<MeasuredBelt> belts, bool isEqual) =>
        [.. belts.Select(belt => Advice(figures, belt, Goal(figures, belts, isEqual))).OfType<string>()];

    // The target, or else what the tighter belt of a pair has.
    private static double? Goal(SoundingFigures figures, IReadOnlyList<MeasuredBelt> belts, bool isEqual) =>
        figures.TargetNewtons ?? (belts.Count > 1 && !isEqual ? belts.Max(belt => belt.Force?.Value) : null);

    private static string? Advice(SoundingFigures figures, MeasuredBelt belt, double? goal)
    {
        if (goal is not { } newtons || belt.Force is not { } force || belt.Span is not { } span)
            return null;
        if (figures.TargetNewtons is not null && TensionTarget.Around(newtons).Judge(force) == TensionVerdict.Right)
            return null;
        // Only the first span was turned on trial.
        if (figures.TrialHertz is { } before && belt.Name != "right belt")
        {
            var trial = new TensionerTrial(StringFormula.Force(span, Uncertain.Within(before, figures.FrequencyError)), force, figures.TrialTurns);
            return trial.TurnsTo(newtons) is { } learned
                ? Sentence(belt.Name, learned, "by what the trial turn did")
                : $"The trial turn of the {belt.Name} did not change its note enough to learn from, or the other way round. Turn further and pluck again.";
        }

        return figures.Screw is { } screw ? Sentence(belt.Name, screw.Turns(force.Value, newtons), "if nothing but the belt gives way; frame and shafts do, so it may take more") : null;
    }

    // Rounded towards no turn, so that the first try does not overshoot.
    private static string Sentence(string belt, double turns, string basis)
    {
        var steps = Math.Floor(Math.Abs(turns) / SmallestTurn) * SmallestTurn;
        return steps < SmallestTurn
            ? $"Leave the screw of the {belt}: less than an eighth of a turn is missing."
            : string.Create(CultureInfo.InvariantCulture, $"{(turns > 0 ? "Tighten" : "Loosen")} the screw of the {belt} by {steps:0.###} turns, {basis}. Move the machine to and fro, pluck again.");
    }
}
