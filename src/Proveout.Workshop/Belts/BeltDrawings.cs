using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using Proveout.Publish.Drawings;

namespace Proveout.Workshop;

/// <summary>Draws a machine's belts with the axes where somebody moved them.</summary>
public static class BeltDrawings
{
    /// <summary>A drawing for each plane: its name and the SVG element.</summary>
    /// <param name="motion">The design.</param>
    /// <param name="asked">Where axes stand, in mm; the middle where nothing is asked, kept within the travel.</param>
    public static IReadOnlyList<(string Plane, string Svg)> Of(MotionDesign motion, IReadOnlyDictionary<string, double> asked)
    {
        ArgumentNullException.ThrowIfNull(motion);
        var places = Places(motion, asked);
        var at = string.Join(", ", motion.Axes.Select((axis, index) => string.Create(CultureInfo.InvariantCulture, $"{axis.Name} at {places[index]:0.#} mm")));
        return
        [
            .. motion.Belts.GroupBy(belt => PlaneOf(motion, belt)).Select(plane => (plane.Key, BeltDrawing.Of(
                $"Belts in {plane.Key}, {at}",
                $"The paths of {string.Join(", ", plane.Select(belt => belt.Name))}; the table of belts gives every bend in order.",
                [.. plane.Select(belt => BeltPath.At(motion, belt, places)).OfType<BeltPath>().Select(Drawn)],
                [.. Marks(motion, plane.Key, places)]))),
        ];
    }

    /// <summary>The belts of a plane as one axis goes over its travel, the others in the middle; null when there is no such plane or axis, or nothing there moves with it.</summary>
    public static string? Film(MotionDesign motion, string plane, string axisName)
    {
        ArgumentNullException.ThrowIfNull(motion);
        if (motion.Axes.FirstOrDefault(axis => axis.Name == axisName) is not { } axis || !Movers(motion, plane).Contains(axisName, StringComparer.Ordinal))
            return null;
        BeltFrame[] frames = [.. Enumerable.Range(0, Pictures).Select(step => FrameAt(motion, plane, axis, axis.Low.Millimeters + (step * (axis.High - axis.Low).Millimeters / (Pictures - 1)))).OfType<BeltFrame>()];
        return frames.Length < 2 ? null : BeltFilm.Of(
            $"Belts in {plane} as {axisName} moves",
            string.Create(CultureInfo.InvariantCulture, $"{axisName} goes from {axis.Low.Millimeters:0.#} to {axis.High.Millimeters:0.#} mm and back, the other axes in the middle; {frames.Length} computed pictures."),
            frames);
    }

    /// <summary>Axes that move something in a plane.</summary>
    public static IReadOnlyList<string> Movers(MotionDesign motion, string plane)
    {
        ArgumentNullException.ThrowIfNull(motion);
        return [.. motion.Belts.Where(belt => PlaneOf(motion, belt) == plane).SelectMany(belt => AxisPlaces.RiddenBy(motion, belt)).Distinct().Order(StringComparer.Ordinal)];
    }

    // A place in which a belt has no path is left out: there the film jumps.
    private static BeltFrame? FrameAt(MotionDesign motion, string plane, Axis axis, double place)
    {
        var places = Places(motion, new Dictionary<string, double> { [axis.Name] = place });
        BeltPath?[] paths = [.. motion.Belts.Where(belt => PlaneOf(motion, belt) == plane).Select(belt => BeltPath.At(motion, belt, places))];
        return paths.Contains(null)
            ? null
            : new BeltFrame(string.Create(CultureInfo.InvariantCulture, $"{axis.Name} at {place:0.#} mm"), [.. paths.Select(path => Drawn(path!))], [.. Marks(motion, plane, places)]);
    }

    private const int Pictures = 31;

    /// <summary>Where the axes stand, in the order of the design.</summary>
    public static ValueList<double> Places(MotionDesign motion, IReadOnlyDictionary<string, double> asked) =>
    [
        .. motion.Axes.Zip(AxisPlaces.Middle(motion), (axis, middle) =>
            asked.TryGetValue(axis.Name, out var place) ? Math.Clamp(place, axis.Low.Millimeters, axis.High.Millimeters) : middle),
    ];

    private static DrawnBelt Drawn(BeltPath path)
    {
        var spans = path.Spans;
        // A loop begins where it leaves its first point, and bends there last.
        var bends = path.Contacts.OrderBy(contact => contact.Point == 0 ? int.MaxValue : contact.Point)
            .Select(contact => (Contact: contact, Arriving: spans.First(span => span.To == contact.Point), Leaving: spans.First(span => span.From == contact.Point)));
        var end = path.Belt.Closed ? spans[0].Start : spans[^1].End;
        return new(
            path.Belt.Name,
            spans[0].Start.X,
            spans[0].Start.Y,
            [.. bends.Select(bend => new BeltArc(
                bend.Arriving.End.X, bend.Arriving.End.Y, bend.Leaving.Start.X, bend.Leaving.Start.Y, bend.Contact.RadiusMm, bend.Contact.Turn is BeltTurn.Left, bend.Contact.WrapRadians > Math.PI))],
            end.X,
            end.Y);
    }

    private static IEnumerable<BeltMark> Marks(MotionDesign motion, string plane, ValueList<double> places)
    {
        foreach (var pulley in motion.Pulleys.Where(pulley => pulley.Plane == plane))
            yield return MarkOf(pulley.Name, BeltSpots.Of(motion, pulley.Name, places), BeltSpots.RadiusMm(pulley), pulley.HasTeeth, pulley.Driven?.Motor ?? "");
        foreach (var anchor in motion.Anchors.Where(anchor => anchor.Plane == plane))
            yield return MarkOf(anchor.Name, BeltSpots.Of(motion, anchor.Name, places), 0, false, "");
    }

    private static BeltMark MarkOf(string name, PlaneSpot spot, double radius, bool isToothed, string motor) => new(name, spot.X, spot.Y, radius, isToothed, motor);

    internal static string PlaneOf(MotionDesign motion, Belt belt) => motion.FindPulley(belt.Path[0].At)?.Plane ?? motion.FindAnchor(belt.Path[0].At)!.Plane;
}
