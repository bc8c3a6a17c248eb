using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>What the heights of a plate say about its tilt, twist, sag and flatness.</summary>
/// <remarks>
/// Flatness is the distance of two parallel planes that hold all points: about the least-squares plane, and least of all (minimum zone), ISO 12781-1.
/// Twist and sag come from a fit of c + a x + b y + t x y + q (x² + y²), about the middle of the points.
/// </remarks>
public sealed record PlateMap
{
    private PlateMap(IReadOnlyList<ProbePoint> points, Plane plane, IReadOnlyList<double> residuals) => (Points, Plane, Residuals) = (points, plane, residuals);

    /// <summary>The points.</summary>
    public IReadOnlyList<ProbePoint> Points { get; }

    /// <summary>The least-squares plane.</summary>
    public Plane Plane { get; }

    /// <summary>Height of each point above the least-squares plane, in mm.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>Standard deviation of the residuals, in mm; null for three points, which every plane fits.</summary>
    public double? ResidualDeviation { get; private init; }

    /// <summary>Flatness about the least-squares plane, in mm.</summary>
    public double Flatness => Residuals.Max() - Residuals.Min();

    /// <summary>Flatness by the minimum zone, in mm; never above <see cref="Flatness"/>.</summary>
    public double LeastFlatness { get; private init; }

    /// <summary>Highest less lowest point, in mm.</summary>
    public double Range => Points.Max(point => point.HeightMillimetres) - Points.Min(point => point.HeightMillimetres);

    /// <summary>Height by which a corner of the probed rectangle stands off the plane through the other three, in mm, with its standard uncertainty; null when the points cannot tell.</summary>
    public Uncertain? Twist { get; private init; }

    /// <summary>Height of the middle above the mean of the probed rectangle's corners, in mm; negative when it sags; null when the points cannot tell.</summary>
    public Uncertain? Crown { get; private init; }

    /// <summary>Analyses points.</summary>
    public static PlateMapResult Of(IReadOnlyList<ProbePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (PointsSpread.Of(points) is { } unsound)
            return new(null, unsound);
        double[] heights = [.. points.Select(point => point.HeightMillimetres)];
        var frame = MapFrame.Of(points);
        double[][] design = [.. points.Select(point => frame.PlaneRow(point.XMillimetres, point.YMillimetres))];
        if (LeastSquares.Fit(design, heights) is not { } fit)
            return new(null, PointsSpread.OnOneLine(points));
        return new(
            new PlateMap(points, frame.PlaneOf(fit), fit.Residuals)
            {
                ResidualDeviation = fit.Degrees > 0 ? fit.Scatter : null,
                LeastFlatness = Minimax.Fit(design, heights) is { } zone ? Math.Min(2 * zone.Largest, fit.Residuals.Max() - fit.Residuals.Min()) : fit.Residuals.Max() - fit.Residuals.Min(),
                Twist = frame.TwistOf(points, heights),
                Crown = frame.CrownOf(points, heights),
            },
            null);
    }

    /// <summary>What changed from this map to a later one: the later height less the earlier, where both have a point; null when they share too few.</summary>
    public PlateMapResult ChangeTo(PlateMap later)
    {
        ArgumentNullException.ThrowIfNull(later);
        return Of(
        [
            .. from before in Points
               from after in later.Points
               where Math.Abs(before.XMillimetres - after.XMillimetres) < SamePlaceMillimetres && Math.Abs(before.YMillimetres - after.YMillimetres) < SamePlaceMillimetres
               select before with { HeightMillimetres = after.HeightMillimetres - before.HeightMillimetres },
        ]);
    }

    private const double SamePlaceMillimetres = 0.5;
}
