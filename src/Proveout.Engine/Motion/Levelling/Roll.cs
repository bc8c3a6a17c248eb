using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>What two supports do: they take away the tilt along the line that joins them.</summary>
internal static class Roll
{
    public static double Length(IReadOnlyList<Support> supports) =>
        Math.Sqrt(Square(supports[1].XMillimetres - supports[0].XMillimetres) + Square(supports[1].YMillimetres - supports[0].YMillimetres));

    /// <summary>Highest less lowest point when the tilt along the line is taken away.</summary>
    public static double RangeAfter(PlateMap map, MapFrame frame, IReadOnlyList<Support> supports, double[] values)
    {
        var (x, y) = Along(supports);
        var slope = Slope(frame, values, x, y);
        double[] left = [.. map.Points.Select(point => point.HeightMillimetres - (slope * ((x * point.XMillimetres) + (y * point.YMillimetres))))];
        return left.Max() - left.Min();
    }

    /// <summary>Rise across the line over the width of the points, which stays.</summary>
    public static Uncertain TiltAcross(PlateMap map, MapFrame frame, IReadOnlyList<Support> supports, LinearFit fit, double scale)
    {
        var (along, up) = Along(supports);
        var (x, y) = (-up, along);
        double[] places = [.. map.Points.Select(point => (x * point.XMillimetres) + (y * point.YMillimetres))];
        var width = places.Max() - places.Min();
        return new(width * Slope(frame, fit.Values, x, y), scale * fit.StandardOf([0, width * x / frame.HalfX, width * y / frame.HalfY]));
    }

    private static double Slope(MapFrame frame, double[] values, double x, double y) => (x * values[1] / frame.HalfX) + (y * values[2] / frame.HalfY);

    private static (double X, double Y) Along(IReadOnlyList<Support> supports) =>
        ((supports[1].XMillimetres - supports[0].XMillimetres) / Length(supports), (supports[1].YMillimetres - supports[0].YMillimetres) / Length(supports));

    private static double Square(double value) => value * value;
}
