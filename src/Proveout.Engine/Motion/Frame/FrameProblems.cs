using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>Why readings give no frame, in sentences that say what to measure instead.</summary>
internal static class FrameProblems
{
    // How far beyond its uncertainty a triangle may fail to close before it is impossible rather than unlucky.
    private const double ClosingFactor = 3;

    public static string? Of(IReadOnlyList<FramePoint> points, IReadOnlyList<MeasuredDistance> distances, IReadOnlyList<MeasuredCorner> corners)
    {
        if (points.Count < 3)
            return "A frame needs at least three points. Name its corners and where the drawing puts them.";
        if (points.DistinctBy(point => point.Name).Count() < points.Count)
            return "Two points have the same name. Give each its own.";
        string[] named = [.. distances.SelectMany(distance => new[] { distance.From, distance.To }), .. corners.SelectMany(corner => new[] { corner.Corner, corner.First, corner.Second })];
        if (named.FirstOrDefault(name => points.All(point => point.Name != name)) is { } stranger)
            return $"There is no point {Quote.Of(stranger)}. The points are {string.Join(", ", points.Select(point => point.Name))}.";
        if (distances.FirstOrDefault(distance => distance.From == distance.To || !(distance.Millimetres.Value > 0) || !(distance.Millimetres.Standard > 0)) is { } unsound)
            return $"The distance {unsound.Name} needs two different points, a length above 0 and an uncertainty above 0.";
        if (corners.FirstOrDefault(corner => !(corner.LegMillimetres > 0) || !(corner.OpenMillimetres.Standard > 0)) is { } square)
            return $"The reading of the {square.Name} needs a leg and an uncertainty above 0.";
        return Impossible(distances);
    }

    /// <summary>Says which further distances would fix every point.</summary>
    public static string NotDetermined(IReadOnlyList<FramePoint> points, IReadOnlyList<MeasuredDistance> distances, IReadOnlyList<MeasuredCorner> corners)
    {
        List<MeasuredDistance> all = [.. distances];
        List<string> wanted = [];
        var rank = Rank(points, all, corners);
        foreach (var (one, first) in points.Index())
            foreach (var other in points.Skip(one + 1))
            {
                all.Add(new(first.Name, other.Name, new(1, 1)));
                var better = Rank(points, all, corners);
                if (better > rank)
                    wanted.Add($"{first.Name}-{other.Name}");
                else
                    all.RemoveAt(all.Count - 1);
                rank = Math.Max(rank, better);
            }

        return $"These readings leave the frame free to move. Measure {string.Join(" and ", wanted)} too; one more distance than needed lets the readings check each other.";
    }

    // How many directions of the unknowns the readings fix, found by taking readings in turn.
    private static int Rank(IReadOnlyList<FramePoint> points, IReadOnlyList<MeasuredDistance> distances, IReadOnlyList<MeasuredCorner> corners)
    {
        var model = new FrameModel(points, distances, corners);
        List<double[]> kept = [];
        foreach (var reading in model.Readings)
        {
            var row = FrameModel.Gradient(model.Start, reading.Predicted, 1e-3);
            double[][] columns = [.. Enumerable.Range(0, row.Length).Select(index => kept.Append(row).Select(each => each[index]).ToArray())];
            if (kept.Count < row.Length && LeastSquares.Fit(columns, new double[row.Length]) is not null)
                kept.Add(row);
        }

        return kept.Count;
    }

    private static string? Impossible(IReadOnlyList<MeasuredDistance> distances)
    {
        foreach (var side in distances)
            foreach (var one in distances.Where(each => Shares(each, side)))
                foreach (var other in distances.Where(each => Closes(side, one, each)))
                {
                    var excess = side.Millimetres.Value - one.Millimetres.Value - other.Millimetres.Value;
                    var standard = Uncertain.Combine(side.Millimetres.Standard, one.Millimetres.Standard, other.Millimetres.Standard);
                    if (excess > ClosingFactor * standard)
                        return string.Create(CultureInfo.InvariantCulture, $"{side.Name} cannot be {side.Millimetres.Value:0.##} mm: {one.Name} and {other.Name} together are {excess:0.##} mm shorter. Measure the three again, and see that each is between the points that its name says.");
                }

        return null;
    }

    private static bool Shares(MeasuredDistance one, MeasuredDistance other) =>
        one != other && (one.From == other.From || one.To == other.From) != (one.From == other.To || one.To == other.To);

    private static bool Closes(MeasuredDistance side, MeasuredDistance one, MeasuredDistance other)
    {
        string[] ends = [side.From, side.To, one.From, one.To, other.From, other.To];
        return other != side && other != one && ends.GroupBy(end => end, StringComparer.Ordinal) is var groups && groups.Count() == 3 && groups.All(group => group.Count() == 2);
    }
}
