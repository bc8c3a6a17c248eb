using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Plots of an error budget over the travel.</summary>
internal static class BudgetPlots
{
    /// <summary>X and height over the travel of x, y over its own where only that matters, else over that of x; null when nothing is known of the direction.</summary>
    public static PlotView? Of(ErrorBudget budget, BudgetDirection direction, BudgetParts parts)
    {
        if (budget.Items.All(item => item.Direction != direction))
            return null;
        // Squareness carries x into y, so that y is shown over x when it counts.
        var isAlongX = direction != BudgetDirection.Y || parts.Square != 0;
        var travel = isAlongX ? parts.TravelXMillimetres : parts.TravelYMillimetres;
        var worst = Line((x, y) => budget.WorstAt(direction, x, y), isAlongX, travel);
        var independent = Line((x, y) => budget.RootSumSquareAt(direction, x, y), isAlongX, travel);
        var most = worst.Max(point => point.Up);
        return new PlotView(
            $"How far {direction} may be off over the travel of {(isAlongX ? "x" : "y")}",
            string.Create(CultureInfo.InvariantCulture, $"Drawn through: sum of bounds, from {1000 * worst.Min(point => point.Up):0} to {1000 * most:0} µm. Broken: root sum square, from {1000 * independent.Min(point => point.Up):0} to {1000 * independent.Max(point => point.Up):0} µm. The other axis stands where it is worst."),
            new PlotAxis($"{(isAlongX ? "x" : "y")}, mm", 0, travel),
            new PlotAxis("off by, either way, mm", 0, 1.1 * most),
            [new PlotLine(worst), new PlotLine(independent)],
            []);
    }

    private static (double Across, double Up)[] Line(Func<double, double, double> figure, bool isAlongX, double travel) =>
        [.. ErrorBudget.Shares.Select(share => (share * travel, ErrorBudget.Most(figure, share, isAlongX)))];
}
