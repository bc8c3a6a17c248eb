using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>The shift and small turn that lays some corners of a frame nearest to the drawing.</summary>
internal readonly record struct SpaceMove(double X, double Y, double Z, double AboutX, double AboutY, double AboutZ)
{
    /// <summary>By least squares over some corners; null when they lie on one line.</summary>
    public static SpaceMove? Of(SpaceModel model, IReadOnlyList<int> corners, double[] unknowns)
    {
        List<double[]> rows = [];
        List<double> offsets = [];
        foreach (var corner in corners)
        {
            var ((x, y, z), (dx, dy, dz)) = (model.Drawn(corner), SpaceModel.Off(unknowns, corner));
            rows.AddRange([[1, 0, 0, 0, z, -y], [0, 1, 0, -z, 0, x], [0, 0, 1, y, -x, 0]]);
            offsets.AddRange([dx, dy, dz]);
        }

        return LeastSquares.Fit(rows, [.. offsets])?.Values is [var shiftX, var shiftY, var shiftZ, var aboutX, var aboutY, var aboutZ]
            ? new(shiftX, shiftY, shiftZ, aboutX, aboutY, aboutZ)
            : null;
    }

    /// <summary>What is left of a corner's offset after the move.</summary>
    public (double X, double Y, double Z) Left(SpaceModel model, double[] unknowns, int corner)
    {
        var ((x, y, z), (dx, dy, dz)) = (model.Drawn(corner), SpaceModel.Off(unknowns, corner));
        return (dx - X - (AboutY * z) + (AboutZ * y), dy - Y - (AboutZ * x) + (AboutX * z), dz - Z - (AboutX * y) + (AboutY * x));
    }
}
