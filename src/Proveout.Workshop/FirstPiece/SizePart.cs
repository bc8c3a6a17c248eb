using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Size, squareness and growth from the numbered measures.</summary>
internal static class SizePart
{
    private static readonly PieceQuantity[] Scales = [PieceQuantity.ScaleX, PieceQuantity.ScaleY, PieceQuantity.ScaleZ];

    /// <summary>What the lengths say; null when none was read or something is wrong.</summary>
    public static SizeAnswer? Of(PieceRequest request, TestPiece piece, CalliperPart calliper, List<Diagnostic> problems)
    {
        var readings = PieceReadings.Of(piece, request, problems);
        var limits = SizeLimits.Of(request.Typed, problems);
        if (problems.Count > 0 || readings.Count == 0)
            return null;
        PieceReading[] means = [.. piece.Measures.Where(measure => readings.ContainsKey(measure.Number)).Select(measure => new PieceReading(measure, readings[measure.Number].Average(value => calliper.Corrected(value, measure.Grip))))];
        PieceDoubt doubt = new(calliper.Calliper, calliper.Repeat, calliper.Warm.Standard);
        var (fit, problem) = PieceFit.Of(piece, means, doubt);
        if (fit is null)
        {
            problems.Add(new("no-size", new SourcePlace("the piece", 0, 0), problem!, "Put the readings right, and hand in all of them again."));
            return null;
        }

        return Answer(fit, PieceExchange.Of(piece, means, doubt, fit), means, piece.Size.Making, limits);
    }

    private static SizeAnswer Answer(PieceFit fit, (int One, int Other)? exchanged, PieceReading[] means, PieceMaking making, SizeLimits limits)
    {
        (PieceQuantity Quantity, PieceClaim Claim)[] claims = [.. fit.Quantities.Where(quantity => quantity is not (PieceQuantity.SlantsAlongX or PieceQuantity.SlantsAlongY)).Select(quantity => (quantity, limits.Claim(fit, quantity)))];
        var isSound = fit.Odd is null && exchanged is null;
        var corrected = claims.Where(each => isSound && each.Claim.AsksForMore).ToDictionary(each => each.Quantity, each => Scales.Contains(each.Quantity) ? -(limits.Shrinkage?.Value ?? 0) : 0);
        PieceLengthView[] lengths = [.. means.Select(reading => new PieceLengthView(reading.Measure.Number, reading.Measure.Words, reading.Measure.NominalMm, reading.Millimetres, PieceClaim.View(fit.After(reading.Measure, corrected), "mm")))];
        return new(
            new(
                [.. Figures(fit, claims, limits)],
                [.. Doubtful(fit, exchanged), .. claims.Select(each => each.Claim.Sentence(SizeWords.Subject(each.Quantity, each.Claim.Budget), times => $"The whole piece {times} times over, each time a fresh one,"))],
                [.. Steps(fit, claims.Where(each => corrected.ContainsKey(each.Quantity)), making, limits), .. corrected.Count > 0 ? (string[])[After(lengths)] : []],
                [.. Remarks(fit, means.Length)],
                isSound && claims.All(each => each.Claim.Keeps == true)),
            lengths,
            [.. claims.Select(each => DoubtOf(each.Quantity, each.Claim.Budget))]);
    }

    private static IEnumerable<SheetFigure> Figures(PieceFit fit, IReadOnlyList<(PieceQuantity Quantity, PieceClaim Claim)> claims, SizeLimits limits)
    {
        foreach (var (quantity, claim) in claims)
            yield return FigureOf(quantity, claim.Budget, limits);
        if (fit.Quantities.Contains(PieceQuantity.ScaleX) && fit.Quantities.Contains(PieceQuantity.ScaleY))
            yield return PieceClaim.Figure("X less Y", fit.Difference(PieceQuantity.ScaleX, PieceQuantity.ScaleY), "mm in 100 mm", 100);
        yield return SheetFigures.Of("Spread of a length about the fit", fit.SpreadMm, "mm");
    }

    private static IEnumerable<string> Doubtful(PieceFit fit, (int One, int Other)? exchanged)
    {
        if (exchanged is { } pair)
            yield return $"Measures {pair.One} and {pair.Other} seem to stand in each other's place: exchanged, all readings agree far better. Look at the bores, and take both again before you believe any of this.";
        else if (fit.Odd is { } odd)
            yield return $"Measure {odd} contradicts the others: take it again before you believe any of this.";
    }

    private static PieceDoubtView DoubtOf(PieceQuantity quantity, UncertaintyBudget budget)
    {
        var (name, unit, factor) = SizeWords.Of(quantity);
        return new(
            name, unit, double.IsFinite(budget.EffectiveDegrees) ? budget.EffectiveDegrees : 0,
            [.. budget.Lines.Where(line => line.Contribution > 1e-9).OrderByDescending(line => line.Contribution).Select(line => new PieceCauseView(line.Cause, factor * line.Contribution, SensibleDigits.Of(factor * line.Contribution, 2)))]);
    }

    private static SheetFigure FigureOf(PieceQuantity quantity, UncertaintyBudget budget, SizeLimits limits)
    {
        var (name, unit, factor) = SizeWords.Of(quantity);
        return PieceClaim.Figure(limits.Shrinkage is not null && Scales.Contains(quantity) ? $"{name}, shrinkage taken off" : name, budget, unit, factor);
    }

    private static IEnumerable<string> Steps(PieceFit fit, IEnumerable<(PieceQuantity Quantity, PieceClaim Claim)> wrong, PieceMaking making, SizeLimits limits)
    {
        var all = wrong.ToArray();
        if (limits.Shrinkage is null && making != PieceMaking.Milled && all.Count(each => (each.Quantity is PieceQuantity.ScaleX or PieceQuantity.ScaleY) && each.Claim.Budget.Value < 0) == 2
            && !fit.Difference(PieceQuantity.ScaleX, PieceQuantity.ScaleY).DiffersFrom(0))
            yield return "X and Y are short alike, as by shrinkage of the material, whose figure was not given. Before you change steps, command a long move and read it with a dial or a rule: if the move is right, stretch parts where they are prepared, and leave the steps.";
        foreach (var (quantity, claim) in all)
            yield return SizeWords.Step(quantity, claim.Budget, making, Array.IndexOf(Scales, quantity) is >= 0 and var axis ? limits.Steps[axis] : null);
    }

    private static string After(IReadOnlyList<PieceLengthView> lengths)
    {
        var worst = lengths.OrderByDescending(length => Math.Abs(length.ReadMm - length.After.Value)).Take(2).OrderBy(length => length.Number).Select(length => $"measure {length.Number} {length.After.Words}");
        return $"Make the piece again: {string.Join(" and ", worst)} is what should then be read, calliper and warmth taken off.";
    }

    private static IEnumerable<string> Remarks(PieceFit fit, int readings)
    {
        if (fit.IsStated)
            yield return string.Create(CultureInfo.InvariantCulture, $"{readings} readings hardly check each other, so that the stated repeatability stands in for what they scatter. Read more of the numbered measures.");
        if (fit.Quantities.Contains(PieceQuantity.SkewXY))
            yield return "Which way an axis leans hangs on how the piece lies: one bore at +X, two at +Y, the edge that stands back below.";
    }
}
