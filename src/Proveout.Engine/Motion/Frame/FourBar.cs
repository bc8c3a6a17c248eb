namespace Proveout.Engine.Motion;

/// <summary>
/// A frame of four stiff sides as its corners let it move: the first side held, the corners turned until their angles are
/// nearest to right ones (least sum of squares).
/// </summary>
internal readonly record struct FourBar(double Push, double FirstDiagonal, double SecondDiagonal, double LeftOver)
{
    private const double Ratio = 0.6180339887498949;

    public static FourBar Of(IReadOnlyList<(double X, double Y)> places)
    {
        double[] sides = [.. Enumerable.Range(0, 4).Select(side => PlaneAngles.Distance(places[side], places[(side + 1) % 4]))];
        var now = PlaneAngles.BeyondRight(places[0], places[1], places[3]);
        // Angles change almost linearly with each other, so the sum of squares has one minimum near square.
        var (low, high) = (-0.3, 0.3);
        for (var step = 0; step < 80; step++)
        {
            var (one, other) = (high - (Ratio * (high - low)), low + (Ratio * (high - low)));
            if (Unrest(sides, one) < Unrest(sides, other))
                high = other;
            else
                low = one;
        }

        var best = Turned(sides, (low + high) / 2);
        return new(
            best[3].X - Turned(sides, now)[3].X,
            PlaneAngles.Distance(best[0], best[2]),
            PlaneAngles.Distance(best[1], best[3]),
            Angles(best).Max(Math.Abs));
    }

    private static double Unrest(double[] sides, double beyond) => Angles(Turned(sides, beyond)).Sum(angle => angle * angle);

    private static IEnumerable<double> Angles((double X, double Y)[] places) =>
        Enumerable.Range(0, 4).Select(corner => PlaneAngles.BeyondRight(places[corner], places[(corner + 3) % 4], places[(corner + 1) % 4]));

    // First point at the origin, second along x; the third where the second and third sides meet, away from the first.
    private static (double X, double Y)[] Turned(double[] sides, double beyond)
    {
        (double X, double Y) second = (sides[0], 0);
        (double X, double Y) fourth = (-sides[3] * Math.Sin(beyond), sides[3] * Math.Cos(beyond));
        var diagonal = PlaneAngles.Distance(second, fourth);
        var along = ((diagonal * diagonal) + (sides[1] * sides[1]) - (sides[2] * sides[2])) / (2 * diagonal);
        var across = Math.Sqrt(Math.Max(0, (sides[1] * sides[1]) - (along * along)));
        var (ux, uy) = ((fourth.X - second.X) / diagonal, (fourth.Y - second.Y) / diagonal);
        return [(0, 0), second, (second.X + (along * ux) + (across * uy), second.Y + (along * uy) - (across * ux)), fourth];
    }
}
