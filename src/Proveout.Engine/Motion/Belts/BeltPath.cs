using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>A belt's pitch line with the axes in one place: straight spans and arcs of circles.</summary>
/// <param name="Belt">The belt.</param>
/// <param name="Spans">Its straight pieces in order.</param>
/// <param name="Contacts">Its bends in order.</param>
public sealed record BeltPath(Belt Belt, ValueList<PathSpan> Spans, ValueList<BeltContact> Contacts)
{
    private const double WholeTurn = 2 * Math.PI;

    // A wrap this close to a whole turn is no wrap, lost to rounding.
    private const double NoWrap = 1e-9;

    /// <summary>Length of its pitch line, in millimetres.</summary>
    public double LengthMm => Spans.Sum(span => span.LengthMm) + Contacts.Sum(contact => contact.LengthMm);

    /// <summary>The path with the axes in a place; null when two neighbours on it leave no room for the belt.</summary>
    /// <param name="motion">The design.</param>
    /// <param name="belt">The belt.</param>
    /// <param name="places">Where the axes stand, in the order of the design.</param>
    public static BeltPath? At(MotionDesign motion, Belt belt, ValueList<double> places)
    {
        ArgumentNullException.ThrowIfNull(belt);
        var count = belt.Path.Count;
        PlaneSpot[] centres = [.. belt.Path.Select(point => BeltPlaces.SpotOf(motion, point.At, places))];
        double[] radii = [.. Enumerable.Range(0, count).Select(at => SignedRadius(motion, belt, at))];
        var spans = new List<PathSpan>(count);
        for (var at = 0; at < (belt.Closed ? count : count - 1); at++)
        {
            var next = (at + 1) % count;
            if (Tangent.Of(centres[at], radii[at], centres[next], radii[next]) is not { } ends)
                return null;
            spans.Add(new(at, next, ends.Start, ends.End));
        }

        return new(belt, spans.ToValueList(), Bends(motion, belt, centres, radii, spans).ToValueList());
    }

    /// <summary>True when the belt's teeth face the pulley that it bends round at a point.</summary>
    public static bool TeethTouch(Belt belt, int point)
    {
        ArgumentNullException.ThrowIfNull(belt);
        var halfTurns = belt.Path.Take(point + 1).Skip(1).Count(passed => passed.HalfTurn);
        return ((belt.Teeth is BeltSide.Left) == (belt.Path[point].Turn is BeltTurn.Left)) == (halfTurns % 2 == 0);
    }

    private static double SignedRadius(MotionDesign motion, Belt belt, int at) => belt.Path[at].Turn switch
    {
        BeltTurn.None => 0,
        BeltTurn.Left => RadiusAt(motion, belt, at),
        _ => -RadiusAt(motion, belt, at),
    };

    private static double RadiusAt(MotionDesign motion, Belt belt, int at) =>
        BeltPlaces.RadiusMm(belt, motion.FindPulley(belt.Path[at].At)!, TeethTouch(belt, at));

    private static IEnumerable<BeltContact> Bends(MotionDesign motion, Belt belt, PlaneSpot[] centres, double[] radii, List<PathSpan> spans)
    {
        foreach (var leaving in spans.Where(span => belt.Path[span.From].Turn is not BeltTurn.None))
        {
            var at = leaving.From;
            var arriving = spans[(at + spans.Count - 1) % spans.Count];
            yield return new(
                at,
                motion.FindPulley(belt.Path[at].At)!,
                belt.Path[at].Turn,
                centres[at],
                Math.Abs(radii[at]),
                Wrap(arriving.Direction, leaving.Direction, belt.Path[at].Turn),
                TeethTouch(belt, at));
        }
    }

    private static double Wrap(PlaneSpot arriving, PlaneSpot leaving, BeltTurn turn)
    {
        var left = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
        var angle = turn is BeltTurn.Left ? left : -left;
        var wrap = angle < 0 ? angle + WholeTurn : angle;
        return wrap > WholeTurn - NoWrap ? 0 : wrap;
    }
}
