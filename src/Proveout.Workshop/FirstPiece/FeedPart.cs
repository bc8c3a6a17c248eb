using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Told against taken filament.</summary>
internal static class FeedPart
{
    public static PieceFindings? Of(IReadOnlyDictionary<string, string> texts, List<Diagnostic> problems)
    {
        TypedFigures typed = new(texts);
        if (!typed.Has(PieceFields.Before) && !typed.Has(PieceFields.After))
            return null;
        var before = TypedSeries.Read(texts, PieceFields.Before, problems);
        var after = TypedSeries.Read(texts, PieceFields.After, problems);
        var told = typed.Require(PieceFields.Told);
        var (division, ruleError) = (typed.Require(PieceFields.Division), typed.Require(PieceFields.RuleError));
        var limit = typed.Require(PieceFields.FeedLimit) / 100;
        var steps = typed.Read(PieceFields.FeedSteps);
        if (typed.Problems.Count == 0 && problems.Count == 0)
            Refuse(typed, before, after, told);
        problems.AddRange(typed.Problems);
        return problems.Count > 0 ? null : Said(FilamentFeed.Of([.. before.Zip(after, (one, other) => one - other)], told, division, ruleError), before.Count, limit, steps);
    }

    private static void Refuse(TypedFigures typed, IReadOnlyList<double> before, IReadOnlyList<double> after, double told)
    {
        if (before.Count != after.Count)
        {
            typed.Refuse(PieceFields.After, "uneven-runs", $"There are {before.Count} readings before and {after.Count} after.", "Write one of each for every run, in the same order.");
            return;
        }

        foreach (var (one, other) in before.Zip(after))
            if (one - other <= 0)
                typed.Refuse(PieceFields.After, "wrong-way", string.Create(CultureInfo.InvariantCulture, $"The mark went from {one:0.##} to {other:0.##} mm, away from the feeder."), "See that before and after are not exchanged; if it is so, the feeder turns the wrong way.");
            else if ((one - other) / told is < 0.2 or > 4)
                typed.Refuse(PieceFields.After, "impossible-feed", string.Create(CultureInfo.InvariantCulture, $"A run of {told:0.##} mm cannot take {one - other:0.##} mm."), Math.Abs(((one - other) * 25.4 / told) - 1) < 0.2 ? "It looks like inches: write millimetres." : "See that the mark is read in millimetres, and that the feeder grips.");
    }

    private static PieceFindings Said(FilamentFeed feed, int runs, double limit, double? stepsNow)
    {
        var ratio = feed.Ratio;
        PieceClaim claim = new(ratio with { Value = ratio.Value - 1 }, limit);
        var percent = SensibleDigits.Of(Uncertain.WithExpanded(100 * Math.Abs(claim.Budget.Value), 100 * claim.Budget.Expanded), "%");
        var steps = feed.Steps(stepsNow ?? 1);
        var set = stepsNow is null ? "Steps for each mm of feed: multiply by" : "Steps for each mm of feed: set";
        var cause = ScaleCause.Of(1 / ratio.Value, ratio.Expanded);
        return new(
            [PieceClaim.Figure("Feed: taken in one run", feed.FedMm, "mm"), PieceClaim.Figure("Feed: taken over told", ratio, ""), .. claim.IsReal ? (SheetFigure[])[PieceClaim.Figure(set, steps, "")] : []],
            [claim.Sentence($"The feeder takes {percent} too {(claim.Budget.Value < 0 ? "little" : "much")}", times => $"{times * runs} runs in all")],
            claim.AsksForMore ? [Step(claim, set, PieceClaim.View(steps, "").Words, cause)] : [],
            runs < 3 ? ["One or two runs do not show how well a run repeats; make five, slowly, so that the feeder does not slip."] : [],
            claim.Keeps == true);
    }

    private static string Step(PieceClaim claim, string set, string figure, ScaleCause? cause) =>
        cause is not null ? $"The feed is off by a ratio that a wrong part or setting makes ({cause.Words}). Set that right; do not stretch it away."
        : claim.Budget.Value < -0.1 ? "A tenth too little is more than steps explain: see that the gear grips, that the nozzle is free, and feed slowly. Then measure again."
        : $"{set} {figure}. Then make three runs more: they should take what they are told.";
}
