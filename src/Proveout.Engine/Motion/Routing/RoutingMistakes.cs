using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Every plausible mistake with the path of a belt; one that leaves no room for the belt cannot be built and is left out.</summary>
internal static class RoutingMistakes
{
    private const double SameHeightMm = 0.5;

    public static IEnumerable<DriveMistake> Of(MotionDesign motion)
    {
        var places = AxisPlaces.Middle(motion);
        return motion.Belts.SelectMany(belt => OfBelt(motion, belt)).Where(mistake => mistake.Built.Motion.Belts.All(belt => BeltPath.At(mistake.Built.Motion, belt, places) is not null));
    }

    private static IEnumerable<DriveMistake> OfBelt(MotionDesign motion, Belt belt) =>
        WrongSides(motion, belt).Concat(Exchanged(motion, belt)).Append(TurnedOver(motion, belt)).Concat(WrongAnchors(motion, belt)).Concat(WrongPlanes(motion, belt));

    private static IEnumerable<DriveMistake> WrongSides(MotionDesign motion, Belt belt) =>
        from point in Bends(belt)
        let taut = Taut(motion, belt, point.Index)
        where taut is not null
        select Mistake(
            motion, DriveMistakeKind.WrongSide, $"belt-wrong-side:{belt.Name}:{point.Index + 1}", $"The belt {belt.Name} passes {point.Item.At} on the wrong side.", [belt.Name, point.Item.At], taut);

    // Past the wrong side, a taut belt either bends the other way round the pulley or does not touch it at all.
    private static Belt? Taut(MotionDesign motion, Belt belt, int point)
    {
        var flipped = With(belt, point, belt.Path[point] with { Turn = belt.Path[point].Turn is BeltTurn.Left ? BeltTurn.Right : BeltTurn.Left });
        if (BeltPath.At(motion, flipped, AxisPlaces.Middle(motion)) is { } path && path.Contacts.First(contact => contact.Point == point).WrapRadians <= Math.PI)
            return flipped;
        return belt.Path.Count > 2 ? belt with { Path = [.. belt.Path.Where((_, at) => at != point)] } : null;
    }

    private static IEnumerable<DriveMistake> Exchanged(MotionDesign motion, Belt belt) =>
        from point in Bends(belt)
        let next = point.Index + 1
        where next < belt.Path.Count && belt.Path[next].Turn is not BeltTurn.None && (!belt.Closed || belt.Path.Count > 2)
        select Mistake(
            motion,
            DriveMistakeKind.IdlersExchanged,
            $"idlers-exchanged:{belt.Name}:{next}",
            $"The belt {belt.Name} goes to {belt.Path[next].At} before {point.Item.At}.",
            [belt.Name, point.Item.At, belt.Path[next].At],
            With(With(belt, point.Index, belt.Path[next]), next, point.Item));

    private static DriveMistake TurnedOver(MotionDesign motion, Belt belt) => Mistake(
        motion,
        DriveMistakeKind.TurnedOver,
        $"belt-turned-over:{belt.Name}",
        $"The belt {belt.Name} is fitted with its teeth on the wrong side.",
        [belt.Name],
        belt with { Teeth = belt.Teeth is BeltSide.Left ? BeltSide.Right : BeltSide.Left });

    private static IEnumerable<DriveMistake> WrongAnchors(MotionDesign motion, Belt belt) =>
        from end in belt.Path.Index()
        where end.Item.Turn is BeltTurn.None
        from anchor in motion.Anchors
        where anchor.Plane == motion.FindAnchor(end.Item.At)!.Plane && belt.Path.All(point => point.At != anchor.Name)
        select Mistake(
            motion,
            DriveMistakeKind.WrongAnchor,
            $"wrong-anchor:{belt.Name}:{end.Item.At}:{anchor.Name}",
            $"An end of {belt.Name} is clamped at {anchor.Name} instead of {end.Item.At}.",
            [belt.Name, end.Item.At, anchor.Name],
            With(belt, end.Index, end.Item with { At = anchor.Name }));

    private static IEnumerable<DriveMistake> WrongPlanes(MotionDesign motion, Belt belt) =>
        from point in Bends(belt)
        let pulley = motion.FindPulley(point.Item.At)!
        from other in motion.Pulleys
        where other.Plane == pulley.Plane && other.Across.Equals(pulley.Across) && other.Up.Equals(pulley.Up) && Math.Abs((other.Height - pulley.Height).Millimeters) > SameHeightMm
        select Mistake(
            motion,
            DriveMistakeKind.WrongPlane,
            $"wrong-plane:{belt.Name}:{pulley.Name}:{other.Name}",
            $"The belt {belt.Name} runs over {other.Name} instead of {pulley.Name}, in another height.",
            [belt.Name, pulley.Name, other.Name],
            With(belt, point.Index, point.Item with { At = other.Name }));

    private static IEnumerable<(int Index, BeltPoint Item)> Bends(Belt belt) => belt.Path.Index().Where(point => point.Item.Turn is not BeltTurn.None);

    private static Belt With(Belt belt, int at, BeltPoint point) => belt with { Path = [.. belt.Path.Select((old, index) => index == at ? point : old)] };

    private static DriveMistake Mistake(MotionDesign motion, DriveMistakeKind kind, string id, string sentence, ValueList<string> subjects, Belt built) => new(
        kind, id, sentence, subjects, BuiltDrives.AsDesigned(motion with { Belts = [.. motion.Belts.Select(belt => belt.Name == built.Name ? built : belt)] }));
}
