namespace Proveout.Engine.Motion;

/// <summary>Finds two measures of one size whose readings stand in each other's place, such as X at Y.</summary>
public static class PieceExchange
{
    // Readings that agree so many times better do so by no chance: with 4 or more degrees left the ratio of variances, 9, is far beyond what 24 ways of exchanging give sound readings.
    private const double Better = 3;

    private const double LeastDegrees = 4;

    /// <summary>Numbers of two measures with which exchanged all readings agree far better; null when there are none.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="readings">The readings as given.</param>
    /// <param name="doubt">What makes them doubtful.</param>
    /// <param name="fit">What they give.</param>
    public static (int One, int Other)? Of(TestPiece piece, IReadOnlyList<PieceReading> readings, PieceDoubt doubt, PieceFit fit)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(fit);
        if (fit.IsStated || fit.Degrees < LeastDegrees)
            return null;
        var pairs =
            from one in readings
            from other in readings
            where one.Measure.Number < other.Measure.Number && IsAlike(one.Measure, other.Measure)
            let spread = PieceFit.Of(piece, Exchanged(readings, one, other), doubt).Fit?.SpreadMm ?? double.PositiveInfinity
            where spread * Better < fit.SpreadMm
            orderby spread
            select ((int, int)?)(one.Measure.Number, other.Measure.Number);
        return pairs.FirstOrDefault();
    }

    private static bool IsAlike(PieceMeasure one, PieceMeasure other) =>
        one.Grip == other.Grip && one.NominalMm.Equals(other.NominalMm) && one.Facing != other.Facing;

    private static PieceReading[] Exchanged(IReadOnlyList<PieceReading> readings, PieceReading one, PieceReading other) =>
    [
        .. readings.Select(reading => reading == one ? one with { Millimetres = other.Millimetres } : reading == other ? other with { Millimetres = one.Millimetres } : reading),
    ];
}
