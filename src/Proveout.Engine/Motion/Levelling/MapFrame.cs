using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>The rectangle that holds the points: coordinates from −1 to 1 in which every fit is well conditioned.</summary>
internal readonly record struct MapFrame(double MiddleX, double MiddleY, double HalfX, double HalfY)
{
    public static MapFrame Of(IReadOnlyList<ProbePoint> points)
    {
        var (left, right) = (points.Min(point => point.XMillimetres), points.Max(point => point.XMillimetres));
        var (front, back) = (points.Min(point => point.YMillimetres), points.Max(point => point.YMillimetres));
        return new((left + right) / 2, (front + back) / 2, (right - left) / 2, (back - front) / 2);
    }

    public (double U, double V) At(double x, double y) => ((x - MiddleX) / HalfX, (y - MiddleY) / HalfY);

    public double[] PlaneRow(double x, double y)
    {
        var (u, v) = At(x, y);
        return [1, u, v];
    }

    public double[] TwistRow(double x, double y)
    {
        var (u, v) = At(x, y);
        return [1, u, v, u * v];
    }

    public double[] CrownRow(double x, double y)
    {
        var (u, v) = At(x, y);
        return [1, u, v, u * v, 1 - (((u * u) + (v * v)) / 2)];
    }

    public Plane PlaneOf(LinearFit fit)
    {
        var (slopeX, slopeY) = (fit.Values[1] / HalfX, fit.Values[2] / HalfY);
        return new(slopeX, slopeY, fit.Values[0] - (slopeX * MiddleX) - (slopeY * MiddleY));
    }

    // The fourth corner's height over the plane of the other three is z1 − z2 + z3 − z4 = 4 t with t the coefficient of u v.
    public Uncertain? TwistOf(IReadOnlyList<ProbePoint> points, double[] heights)
    {
        var frame = this;
        return Coefficient([.. points.Select(point => frame.TwistRow(point.XMillimetres, point.YMillimetres))], heights, 4);
    }

    public Uncertain? CrownOf(IReadOnlyList<ProbePoint> points, double[] heights)
    {
        var frame = this;
        return Coefficient([.. points.Select(point => frame.CrownRow(point.XMillimetres, point.YMillimetres))], heights, 1);
    }

    // The last coefficient; its uncertainty from the scatter, with Student's factor for few degrees of freedom folded in so that twice it covers 95 %.
    private static Uncertain? Coefficient(double[][] design, double[] heights, double factor)
    {
        if (LeastSquares.Fit(design, heights) is not { } fit)
            return null;
        var last = fit.Values.Length - 1;
        var standard = fit.Degrees > 0
            ? fit.Scatter * Math.Sqrt(fit.Cofactors[last, last]) * StudentT.Factor(0.95, fit.Degrees) / Uncertain.CoverageFactor
            : double.NaN;
        return new(factor * fit.Values[last], factor * standard);
    }
}
