using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Adds up how far the nozzle may be off over the travel.</summary>
public static class BudgetSheet
{
    private static readonly BudgetDirection[] Directions = [BudgetDirection.X, BudgetDirection.Y, BudgetDirection.Z];

    /// <summary>What follows from the figures, or everything that is wrong with them.</summary>
    /// <param name="typedFigures">Figures by the names of <see cref="BudgetFields"/>.</param>
    public static Outcome<SheetView> Of(IReadOnlyDictionary<string, string> typedFigures)
    {
        var typed = new TypedFigures(typedFigures);
        var parts = PartsOf(typed);
        var limit = typed.Read(BudgetFields.Limit);
        string[] missing = [.. BudgetFields.Causes.Where(field => !typed.Has(field)).Select(field => field.Label)];
        if (typed.Problems.Count == 0 && missing.Length == BudgetFields.Causes.Count)
            typed.Refuse(BudgetFields.Square, "nothing-known", "No cause of an error was given.", "Give at least one, such as what the frame page says of squareness.");
        if (typed.Problems.Count > 0)
            return Outcome.Refused<SheetView>(typed.Problems);
        var budget = ErrorBudget.Of(parts);
        return Outcome.Of(new SheetView(
            [.. Directions.SelectMany(direction => Figures(budget, direction))],
            [.. Directions.Select(direction => Finding(budget, direction, limit)).OfType<string>()],
            [],
            [
                "Sum of bounds: no error is larger while every bound holds and no other cause acts. Root sum square: what independent causes seldom exceed, no bound. Errors count from the middle of the travel.",
                .. missing.Length > 0 ? (string[])[$"Not given, and counted as nothing: {string.Join("; ", missing)}."] : [],
            ],
            limit is null || Directions.All(direction => Worst(budget, direction) <= limit))
        {
            Plots = [.. Directions.Select(direction => BudgetPlots.Of(budget, direction, parts)).OfType<PlotView>()],
        });
    }

    private static BudgetParts PartsOf(TypedFigures typed)
    {
        var (x, y) = (typed.Require(BudgetFields.TravelX), typed.Require(BudgetFields.TravelY));
        var (spare, shortest, stiffness) = (typed.Require(BudgetFields.LoopSpare), typed.Require(BudgetFields.ShortestRun), typed.Read(BudgetFields.BeltStiffness));
        if (stiffness is not null && !typed.Has(BudgetFields.Friction))
            typed.Refuse(BudgetFields.Friction, "missing-figure", "It is missing.", "A belt gives way to the friction that it pulls against.");
        if (typed.Has(BudgetFields.Expansion) != typed.Has(BudgetFields.Warming))
            typed.Refuse(BudgetFields.Warming, "half-given", "Growth for each kelvin and warming belong together.", "Give both, or neither.");
        if (stiffness is not null && shortest >= spare + Math.Min(x, y))
            typed.Refuse(BudgetFields.ShortestRun, "run-too-long", "The shortest run is longer than what is left of the loop.", "Measure the run with the carriage at the motor's end, and the loop from clamp to clamp.");
        return new BudgetParts(x, y)
        {
            Square = Known(BudgetFields.Square) / 200,
            BeamSideways = Known(BudgetFields.BeamSideways),
            BeamUpright = Known(BudgetFields.BeamUpright),
            RailSideways = Known(BudgetFields.RailSideways),
            RailUpright = Known(BudgetFields.RailUpright),
            RailsRise = Known(BudgetFields.RailsRise),
            BacklashX = Known(BudgetFields.BacklashX),
            BacklashY = Known(BudgetFields.BacklashY),
            BeltX = Belt(x),
            BeltY = Belt(y),
            Friction = Known(BudgetFields.Friction),
            PlateResidual = Known(BudgetFields.Plate),
            ProbeError = Known(BudgetFields.Probe),
            HeightDrift = Known(BudgetFields.Drift),
            Growth = Known(BudgetFields.Expansion) * 1e-6 * Known(BudgetFields.Warming),
        };

        double Known(FigureField field) => typed.Read(field) ?? 0;

        (BeltDrivenMass, double)? Belt(double travel) =>
            stiffness is { } newtons ? (new BeltDrivenMass(newtons, ((2 * travel) + spare) / 1000, 1), shortest / 1000) : null;
    }

    private static double Worst(ErrorBudget budget, BudgetDirection direction) => ErrorBudget.Most((x, y) => budget.WorstAt(direction, x, y));

    private static double RootSumSquare(ErrorBudget budget, BudgetDirection direction) => ErrorBudget.Most((x, y) => budget.RootSumSquareAt(direction, x, y));

    private static IEnumerable<SheetFigure> Figures(ErrorBudget budget, BudgetDirection direction)
    {
        var items = budget.Items.Where(item => item.Direction == direction).ToArray();
        if (items.Length == 0)
            yield break;
        yield return Figure($"{direction}: sum of bounds", Worst(budget, direction));
        yield return Figure($"{direction}: root sum square", RootSumSquare(budget, direction));
        foreach (var item in items)
            yield return Figure($"{direction}: {item.Name}", ErrorBudget.Most(item.Bound));
    }

    // A bound is rounded up, to a micrometre.
    private static SheetFigure Figure(string name, double millimetres)
    {
        var up = Math.Ceiling((1000 * millimetres) - 1e-9) / 1000;
        return new(name, "mm", new(up, 0, string.Create(CultureInfo.InvariantCulture, $"± {up:0.###} mm")));
    }

    private static string? Finding(ErrorBudget budget, BudgetDirection direction, double? limit)
    {
        if (budget.Items.Where(item => item.Direction == direction).MaxBy(item => ErrorBudget.Most(item.Bound)) is not { } largest)
            return null;
        var (worst, independent) = (Worst(budget, direction), RootSumSquare(budget, direction));
        var verdict = limit is not { } wanted ? ""
            : worst <= wanted ? $"{direction} keeps the limit even if everything adds up. "
            : independent <= wanted ? $"{direction} keeps the limit unless errors add up: independent ones seldom do. "
            : $"{direction} does not keep the limit. ";
        return $"{verdict}Most of {direction} comes from: {largest.Name}.";
    }
}
