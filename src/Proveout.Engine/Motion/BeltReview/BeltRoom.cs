using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Finds spans that rub on a pulley or cross another span of the same height. Arcs on pulleys are not compared with each other.</summary>
internal static class BeltRoom
{
    private const int Places = 3;

    public static IEnumerable<BeltFinding> Review(MotionDesign motion) =>
        motion.Belts
            .SelectMany(belt => motion.Belts.Where(other => MayTouch(motion, belt, other)).SelectMany(other => Between(motion, belt, other)))
            .Concat(motion.Belts.SelectMany(belt => Rubs(motion, belt)))
            .DistinctBy(finding => finding.Sentence);

    private static bool MayTouch(MotionDesign motion, Belt one, Belt two) =>
        string.CompareOrdinal(one.Name, two.Name) <= 0 && PlaneOf(motion, one) == PlaneOf(motion, two);

    private static IEnumerable<BeltFinding> Between(MotionDesign motion, Belt one, Belt two)
    {
        foreach (var (first, second) in Paths(motion, one, two))
            foreach (var span in first.Spans)
                foreach (var other in second.Spans.Where(other => one != two || !AreNeighbours(one, span, other)))
                    if (Math.Abs(HeightOf(motion, one, span) - HeightOf(motion, two, other)) < (one.Width + two.Width).Millimeters / 2 && Cross(span, other))
                        yield return new(
                            "belts-cross", [one.Name, two.Name],
                            $"The span of {one.Name} to {one.Path[span.To].At} crosses that of {two.Name} to {two.Path[other.To].At} in one height.", "Lead one of them in another height, or otherwise round.", "geometry");
    }

    private static IEnumerable<BeltFinding> Rubs(MotionDesign motion, Belt belt)
    {
        var pulleys = motion.Pulleys.Where(pulley => pulley.Plane == PlaneOf(motion, belt) && belt.Path.All(point => point.At != pulley.Name)).ToList();
        foreach (var (path, places) in Paths(motion, belt))
            foreach (var pulley in pulleys)
            {
                var (centre, radius) = (BeltPlaces.SpotOf(motion, pulley.Name, places), pulley.HasTeeth ? BeltPlaces.PitchRadiusMm(pulley) : pulley.Diameter!.Value.Millimeters / 2);
                var span = path.Spans.FirstOrDefault(span =>
                    Math.Abs(HeightOf(motion, belt, span) - pulley.Height.Millimeters) < belt.Width.Millimeters && Distance(centre, span) < radius + belt.BackMm);
                if (span is not null)
                    yield return new(
                        "belt-rubs", [belt.Name, pulley.Name],
                        string.Create(CultureInfo.InvariantCulture, $"The span of {belt.Name} to {belt.Path[span.To].At} rubs on {pulley.Name}."), "Move one of them, or let the belt bend round it.", "geometry");
            }
    }

    private static IEnumerable<(BeltPath, BeltPath)> Paths(MotionDesign motion, Belt one, Belt two)
    {
        var ridden = AxisPlaces.RiddenBy(motion, one).Union(AxisPlaces.RiddenBy(motion, two)).ToHashSet(StringComparer.Ordinal);
        foreach (var places in AxisPlaces.Over(motion, ridden.Contains, Places))
            if (BeltPath.At(motion, one, places) is { } first && BeltPath.At(motion, two, places) is { } second)
                yield return (first, second);
    }

    private static IEnumerable<(BeltPath, ValueList<double>)> Paths(MotionDesign motion, Belt belt)
    {
        foreach (var places in AxisPlaces.Over(motion, _ => true, Places))
            if (BeltPath.At(motion, belt, places) is { } path)
                yield return (path, places);
    }

    private static bool AreNeighbours(Belt belt, PathSpan one, PathSpan two) =>
        one.From >= two.From || one.To == two.From || (belt.Closed && two.To == one.From);

    private static string PlaneOf(MotionDesign motion, Belt belt) => motion.FindPulley(belt.Path[0].At)?.Plane ?? motion.FindAnchor(belt.Path[0].At)!.Plane;

    private static double HeightOf(MotionDesign motion, Belt belt, PathSpan span) =>
        (BeltPlaces.Of(motion, belt.Path[span.From].At).HeightMm + BeltPlaces.Of(motion, belt.Path[span.To].At).HeightMm) / 2;

    private static bool Cross(PathSpan one, PathSpan two)
    {
        static double Side(PathSpan span, PlaneSpot spot) => (span.End - span.Start).Cross(spot - span.Start);
        return Side(one, two.Start) * Side(one, two.End) < 0 && Side(two, one.Start) * Side(two, one.End) < 0;
    }

    private static double Distance(PlaneSpot spot, PathSpan span)
    {
        var way = span.End - span.Start;
        var along = Math.Clamp((spot - span.Start).Dot(way) / way.Dot(way), 0, 1);
        return (spot - (span.Start + (along * way))).Length;
    }
}
