using System.Globalization;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>Why readings of a test piece give no answer, in sentences that say what to do.</summary>
public static class PieceProblems
{
    private const double MillimetresInInch = 25.4;

    // The largest ratios that a wrong part makes are 0.5 and 2; a piece between is taken as it is.
    private const double LeastRatio = 0.45;
    private const double MostRatio = 2.2;
    private const double Near = 0.05;

    /// <summary>What is wrong with readings; null when nothing is.</summary>
    internal static string? Of(TestPiece piece, IReadOnlyList<PieceReading> readings)
    {
        if (readings.Count == 0)
            return "No length of the piece was read.";
        if (readings.GroupBy(reading => reading.Measure.Number).FirstOrDefault(group => group.Count() > 1) is { } twice)
            return $"Measure {twice.Key} stands twice.";
        return readings.Select(reading => Of(piece, reading.Measure, reading.Millimetres)).FirstOrDefault(problem => problem is not null) ?? Mixed(piece, readings);
    }

    /// <summary>Why a length cannot be that of a measure; null when it can.</summary>
    public static string? Of(TestPiece piece, PieceMeasure measure, double millimetres)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(measure);
        if (!(millimetres > 0) || !double.IsFinite(millimetres))
            return $"Measure {measure.Number} needs a length above 0.";
        var ratio = millimetres / measure.NominalMm;
        var text = string.Create(CultureInfo.InvariantCulture, $"Measure {measure.Number} is drawn as {measure.NominalMm:0.##} mm and was read as {millimetres:0.###} mm");
        if (Math.Abs((ratio * MillimetresInInch) - 1) < Near)
            return $"{text}: this is a length in inches. Set the calliper to millimetres, or multiply by 25.4.";
        if (ratio is > LeastRatio and < MostRatio)
            return null;
        return piece.Measures.FirstOrDefault(other => Math.Abs((millimetres / other.NominalMm) - 1) < Near) is { } other
            ? $"{text}, which would fit measure {other.Number}. See that the numbers are not mixed up, and that the piece was drawn in this size."
            : $"{text}. See that no digit is missing and that the piece was drawn in this size.";
    }

    /// <summary>Names further measures that would decide what the readings leave open.</summary>
    internal static string Undecided(TestPiece piece, IReadOnlyList<PieceReading> readings)
    {
        var model = PieceModel.Of([.. readings.Select(reading => reading.Measure)]);
        List<PieceMeasure> taken = [.. readings.Select(reading => reading.Measure)];
        List<string> wanted = [];
        var rank = Rank(model, taken);
        foreach (var measure in piece.Measures.Where(measure => !taken.Contains(measure) && PieceModel.Of([measure]).Unknowns.All(unknown => unknown >= PieceModel.Zero || model.Unknowns.Contains(unknown))))
        {
            var better = Rank(model, [.. taken, measure]);
            if (better <= rank)
                continue;
            rank = better;
            taken.Add(measure);
            wanted.Add($"{measure.Number} ({measure.Words})");
        }

        return $"These readings do not tell scale, growth of walls and skew apart. Read {string.Join(" and ", wanted)} too; some more than needed let the readings check each other.";
    }

    // Lengths that face the same way are all stretched alike; one that is not was misread or stands at the wrong number.
    private static string? Mixed(TestPiece piece, IReadOnlyList<PieceReading> readings) =>
        readings.GroupBy(reading => reading.Measure.Facing).Where(way => way.Count() >= 3).Select(way => Mixed(piece, [.. way])).FirstOrDefault(problem => problem is not null);

    private static string? Mixed(TestPiece piece, PieceReading[] alike)
    {
        double[] ratios = [.. alike.Select(RatioOf).Order()];
        var middle = ratios[ratios.Length / 2];
        if (alike.FirstOrDefault(reading => Math.Abs((RatioOf(reading) / middle) - 1) > 0.15) is not { } odd)
            return null;
        var mend = piece.Measures.FirstOrDefault(other => Math.Abs((odd.Millimetres / other.NominalMm / middle) - 1) < 0.02) is { } other
            ? $"It would fit measure {other.Number}: see that the numbers are not mixed up."
            : "Read it again.";
        return string.Create(CultureInfo.InvariantCulture, $"Measure {odd.Measure.Number} is drawn as {odd.Measure.NominalMm:0.##} mm and was read as {odd.Millimetres:0.###} mm, while others that face the same way are {middle:0.###} times as drawn. {mend}");
    }

    private static double RatioOf(PieceReading reading) => reading.Millimetres / reading.Measure.NominalMm;

    private static int Rank(PieceModel model, IReadOnlyList<PieceMeasure> measures)
    {
        var start = new double[model.Unknowns.Count];
        List<double[]> kept = [];
        foreach (var measure in measures)
        {
            // Errors of the calliper are held by what is known of them, and need no reading.
            double[] row = [.. model.Gradient(measure, start).Where((_, index) => model.Unknowns[index] < PieceModel.Zero)];
            double[][] columns = [.. Enumerable.Range(0, row.Length).Select(index => kept.Append(row).Select(each => each[index]).ToArray())];
            if (kept.Count < row.Length && LeastSquares.Fit(columns, new double[row.Length]) is not null)
                kept.Add(row);
        }

        return kept.Count;
    }
}
