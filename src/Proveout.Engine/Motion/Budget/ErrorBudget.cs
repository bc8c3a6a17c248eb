namespace Proveout.Engine.Motion;

/// <summary>How far the nozzle may be from where it is told to be, over the travel, from bounds of each cause.</summary>
/// <remarks>
/// The ideas are those of ISO 230-1 (straightness and squareness as errors of guides) and of error budgets in precision engineering (from memory):
/// each cause is carried to the nozzle by geometry, then all are added, once as if all were at their worst together, once as root sum square as if they
/// were independent. Errors count from the middle of the travel; the rails of y are the reference, so that squareness is counted once, in y.
/// </remarks>
public sealed class ErrorBudget
{
    private const int Places = 20;

    private ErrorBudget(IReadOnlyList<BudgetItem> items) => Items = items;

    /// <summary>Every cause that counts.</summary>
    public IReadOnlyList<BudgetItem> Items { get; }

    /// <summary>The budget of a machine.</summary>
    public static ErrorBudget Of(BudgetParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return new([.. new[] { AcrossX(parts), AcrossY(parts), Upright(parts) }.SelectMany(items => items).Where(item => item.Bound(0, 0) > 0 || item.Bound(0.5, 0.5) > 0)]);
    }

    /// <summary>Sum of all bounds in a direction at a place, in mm: nothing is further off while the bounds hold.</summary>
    public double WorstAt(BudgetDirection direction, double shareX, double shareY) =>
        Items.Where(item => item.Direction == direction).Sum(item => item.Bound(shareX, shareY));

    /// <summary>Root of the sum of the squares of all bounds, in mm: what independent causes seldom exceed. It is no bound.</summary>
    public double RootSumSquareAt(BudgetDirection direction, double shareX, double shareY) =>
        Math.Sqrt(Items.Where(item => item.Direction == direction).Sum(item => item.Bound(shareX, shareY) * item.Bound(shareX, shareY)));

    /// <summary>The greatest of a figure over the whole travel.</summary>
    public static double Most(Func<double, double, double> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Shares.SelectMany(_ => Shares, figure).Max();
    }

    /// <summary>The greatest of a figure over the travel of the other axis, at a share of this one's.</summary>
    public static double Most(Func<double, double, double> figure, double share, bool isAlongX)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Shares.Max(other => isAlongX ? figure(share, other) : figure(other, share));
    }

    /// <summary>Shares of a travel at which it is looked at, ends and middle included.</summary>
    public static IReadOnlyList<double> Shares { get; } = [.. Enumerable.Range(0, Places + 1).Select(place => (double)place / Places)];

    private static IEnumerable<BudgetItem> AcrossX(BudgetParts parts)
    {
        yield return new("rails not straight, seen from above", BudgetDirection.X, (_, _) => parts.RailSideways / 2);
        yield return new("backlash", BudgetDirection.X, (_, _) => parts.BacklashX / 2);
        if (parts.BeltX is { } belt)
            yield return new("belt gives way to friction", BudgetDirection.X, (x, _) => Give(belt, parts.Friction, x * parts.TravelXMillimetres));
        yield return new("growth by heat", BudgetDirection.X, (x, _) => Math.Abs(parts.Growth) * FromMiddle(x, parts.TravelXMillimetres));
    }

    private static IEnumerable<BudgetItem> AcrossY(BudgetParts parts)
    {
        yield return new("beam not square to the rails", BudgetDirection.Y, (x, _) => Math.Abs(parts.Square) * FromMiddle(x, parts.TravelXMillimetres));
        yield return new("beam not straight, seen from above", BudgetDirection.Y, (_, _) => parts.BeamSideways / 2);
        yield return new("backlash", BudgetDirection.Y, (_, _) => parts.BacklashY / 2);
        if (parts.BeltY is { } belt)
            yield return new("belt gives way to friction", BudgetDirection.Y, (_, y) => Give(belt, parts.Friction, y * parts.TravelYMillimetres));
        yield return new("growth by heat", BudgetDirection.Y, (_, y) => Math.Abs(parts.Growth) * FromMiddle(y, parts.TravelYMillimetres));
    }

    private static IEnumerable<BudgetItem> Upright(BudgetParts parts)
    {
        yield return new("beam not straight, seen from the front", BudgetDirection.Z, (_, _) => parts.BeamUpright / 2);
        yield return new("rails not straight, seen from the side", BudgetDirection.Z, (_, _) => parts.RailUpright / 2);
        // A rail that rises against the other twists the plane of the nozzle; levelling takes the plane away and leaves the product of both distances from the middle.
        yield return new("rails not parallel", BudgetDirection.Z, (x, y) => Math.Abs(parts.RailsRise * (x - 0.5) * (y - 0.5)));
        yield return new("plate after levelling", BudgetDirection.Z, (_, _) => parts.PlateResidual / 2);
        yield return new("probe", BudgetDirection.Z, (_, _) => parts.ProbeError);
        yield return new("drift of the height after probing", BudgetDirection.Z, (_, _) => Math.Abs(parts.HeightDrift));
    }

    private static double FromMiddle(double share, double travel) => Math.Abs(share - 0.5) * travel;

    // Friction turns round with the direction, so that the carriage lags by this much either way.
    private static double Give((BeltDrivenMass Belt, double ShortestRun) drive, double friction, double atMillimetres) =>
        1000 * drive.Belt.Deflection(drive.ShortestRun + (atMillimetres / 1000), friction);
}
