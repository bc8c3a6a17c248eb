using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>What belts and screws say of how axes and shafts move together: each row is nothing, millimetres against millimetres.</summary>
/// <remarks>
/// Between two places that hold a belt's teeth (anchors, and toothed pulleys that its teeth mesh with and that turn with a shaft) the
/// amount of belt stays. A stretch from pulley P to pulley Q with lengths fixed in direction changes by the sum of u · (movements) over its
/// spans, and takes up r θ at Q less r θ at P, counted in the belt's direction. Toothed idlers turn freely and hold nothing.
/// </remarks>
internal static class DriveEquations
{
    private static readonly double RadiansATurn = 2 * Math.PI;

    /// <summary>The rows: first a column for each axis (mm), then for each shaft (radians, to the left).</summary>
    public static List<double[]> Of(MotionDesign motion, string[] shafts, ValueList<double> places)
    {
        var rows = new List<double[]>();
        foreach (var belt in motion.Belts)
            if (BeltPath.At(motion, belt, places) is { } path)
                rows.AddRange(RowsOf(motion, shafts, path));
        foreach (var screw in motion.Screws)
        {
            var row = new double[motion.Axes.Count + shafts.Length];
            row[motion.Axes.Index().First(axis => axis.Item.Name == screw.Moves).Index] = 1;
            row[motion.Axes.Count + Array.IndexOf(shafts, screw.Name)] = -screw.Lead.Millimeters / RadiansATurn;
            rows.Add(row);
        }

        return rows;
    }

    private static IEnumerable<double[]> RowsOf(MotionDesign motion, string[] shafts, BeltPath path)
    {
        var holds = Enumerable.Range(0, path.Belt.Path.Count).Where(point => Holds(path, point)).ToList();
        if (!path.Belt.Closed)
            return holds.Zip(holds.Skip(1), (from, to) => Row(from, to, path.Spans.Skip(from).Take(to - from)));
        return holds.Select((from, at) => holds[(at + 1) % holds.Count] is var to && to > from
            ? Row(from, to, path.Spans.Skip(from).Take(to - from))
            : Row(from, to, path.Spans.Skip(from).Concat(path.Spans.Take(to))));

        double[] Row(int from, int to, IEnumerable<PathSpan> spans)
        {
            var row = new double[motion.Axes.Count + shafts.Length];
            var stretch = spans.ToList();
            foreach (var (index, axis) in motion.Axes.Index())
                row[index] = stretch.Sum(span => BeltLength.GradientOf(motion, path.Belt, span, axis.Name));
            Take(path, shafts, row, motion.Axes.Count, to, 1);
            Take(path, shafts, row, motion.Axes.Count, from, -1);
            return row;
        }
    }

    private static bool Holds(BeltPath path, int point) =>
        path.Belt.Path[point].Turn is BeltTurn.None
        || path.Contacts.Any(contact => contact.Point == point && contact is { TeethTouch: true, Pulley.Kind: PulleyKind.Toothed });

    private static void Take(BeltPath path, string[] shafts, double[] row, int axes, int point, int sign)
    {
        if (path.Contacts.FirstOrDefault(contact => contact.Point == point) is { } contact)
            row[axes + Array.IndexOf(shafts, contact.Pulley.ShaftName)] += sign * contact.RadiusMm * (contact.Turn is BeltTurn.Left ? 1 : -1);
    }
}
