using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>What is to be measured beside, so that a frame is held in space.</summary>
internal static class SpaceProblems
{
    /// <summary>Says which further distances, and then heights, would hold every corner.</summary>
    public static string NotDetermined(IReadOnlyList<SpacePoint> points, IReadOnlyList<MeasuredDistance> distances)
    {
        List<MeasuredDistance> all = [.. distances];
        List<string> wanted = [];
        var rank = Rank(points, all);
        foreach (var (one, first) in points.Index())
            foreach (var other in points.Skip(one + 1).Where(other => !distances.Any(distance => Joins(distance, first.Name, other.Name))))
            {
                all.Add(new(first.Name, other.Name, new(1, 1)));
                var better = Rank(points, all);
                if (better > rank)
                    wanted.Add($"{first.Name}-{other.Name}");
                else
                    all.RemoveAt(all.Count - 1);
                rank = Math.Max(rank, better);
            }

        // Distances in one plane say nothing about what leaves it.
        if (SpaceFit.Step(new SpaceModel(points, all), new double[new SpaceModel(points, all).Unknowns]) is null)
            wanted.Add("the heights of all corners over a flat slab, or from a level line");
        return $"These readings leave the frame free to move. Measure {string.Join(" and ", wanted)} too; one more than needed lets the readings check each other.";
    }

    private static bool Joins(MeasuredDistance distance, string one, string other) =>
        (distance.From, distance.To) == (one, other) || (distance.From, distance.To) == (other, one);

    // Directions that the readings and the datum hold, by taking rows in turn.
    private static int Rank(IReadOnlyList<SpacePoint> points, IReadOnlyList<MeasuredDistance> distances)
    {
        var model = new SpaceModel(points, distances);
        var start = new double[model.Unknowns];
        List<double[]> kept = [];
        foreach (var row in model.Datum().Concat(model.Readings.Select(reading => reading.At(start).Row)))
        {
            double[][] columns = [.. Enumerable.Range(0, row.Length).Select(index => kept.Append(row).Select(each => each[index]).ToArray())];
            if (kept.Count < row.Length && LeastSquares.Fit(columns, new double[row.Length]) is not null)
                kept.Add(row);
        }

        return kept.Count;
    }
}
