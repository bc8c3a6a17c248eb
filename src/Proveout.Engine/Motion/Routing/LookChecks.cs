using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>What eye, rule and finger find on belts at rest.</summary>
internal static class LookChecks
{
    public static IEnumerable<DriveCheck> Of(MotionDesign motion) =>
        motion.Belts.SelectMany(belt => OfBelt(motion, belt)).Concat(motion.Pulleys.Where(pulley => pulley.Kind is PulleyKind.Toothed).Select(Count));

    private static IEnumerable<DriveCheck> OfBelt(MotionDesign motion, Belt belt)
    {
        yield return new(
            $"trace:{belt.Name}", "belt-trace", DriveSetUps.Look, $"Trace {belt.Name}",
            $"Follow {belt.Name} from {belt.Path[0].At} with a finger: {Way(belt)}. Enter the number of the first point that differs, 0 when none does.",
            "point", "The path is part of the drawing.", 20 + (10 * belt.Path.Count), state => DriveCheck.Exactly(FirstDifference(belt, BeltOf(state, belt))));
        yield return Contacts("smooth-teeth", belt, "Teeth on smooth idlers", "the smooth idlers that its teeth touch", contact => contact is { TeethTouch: true, Pulley.Kind: PulleyKind.Smooth });
        yield return Contacts("teeth-back", belt, "Back on teeth", "the toothed pulleys and idlers that its smooth back touches", contact => !contact.TeethTouch && contact.Pulley.HasTeeth);
        yield return new(
            $"height:{belt.Name}", "belt-height", DriveSetUps.Look, $"Slope of {belt.Name}",
            $"Measure with a rule how far {belt.Name} rises or falls along each span, from the ground of its plane. Enter the largest difference.",
            "mm", "Both ends of each span are drawn in one height.", 90, state => DriveCheck.Around(Slope(state.Built.Motion, BeltOf(state, belt)), HandTolerances.HeightMm));
        if (!belt.Closed && belt.Tail is { } tail)
            yield return new(
                $"tail:{belt.Name}", "belt-tail", DriveSetUps.Look, $"Tails of {belt.Name}",
                $"With {belt.Name} cut to the length given and drawn tight, add up what sticks out of its two clamps. Enter less than 0 by what it does not reach.",
                "mm", "Cut length less the length of the path.", 60, state => DriveCheck.Around((2 * tail.Millimeters) - Longer(state, belt), HandTolerances.TakeUpMm));
        if (belt.Tension is { } tension)
            yield return Sag(motion, belt, tension.Newtons);
    }

    private static DriveCheck Contacts(string id, Belt belt, string title, string what, Func<BeltContact, bool> counts) => new(
        $"{id}:{belt.Name}", id, DriveSetUps.Look, $"{title}: {belt.Name}", $"Along {belt.Name}, count {what}.", "contacts",
        "Each bend says which side of the belt touches.", 30, state => DriveCheck.Exactly(BeltPath.At(state.Built.Motion, BeltOf(state, belt), state.Middle)!.Contacts.Count(counts)));

    // A string pressed at mid-span: F = 4 T d / S for small sag (statics).
    private static DriveCheck Sag(MotionDesign motion, Belt belt, double newtons)
    {
        var span = BeltPath.At(motion, belt, AxisPlaces.Middle(motion))!.Spans.MaxBy(span => span.LengthMm)!;
        double At(double share) => HandTolerances.PressNewtons * span.LengthMm / (4 * share * newtons);
        return new(
            $"sag:{belt.Name}", "belt-sag", DriveSetUps.Look, $"Sag of {belt.Name}",
            $"Hang 200 g on the middle of the span from {belt.Path[span.From].At} to {belt.Path[span.To].At}, or press with 2 N. Enter how far it gives.",
            "mm", string.Create(CultureInfo.InvariantCulture, $"{span.LengthMm:0} mm of belt at {newtons:0.#} N give F S / 4 T."), 60,
            state => state.Changed.Any(changed => changed.Name == belt.Name) ? ReadingInterval.Anything
                : state.Built.Slack == belt.Name ? new(At(HandTolerances.SlackShare) - HandTolerances.RuleMm, HandTolerances.MostSagMm)
                : new(At(1 + HandTolerances.TensionShare) - HandTolerances.RuleMm, At(1 - HandTolerances.TensionShare) + HandTolerances.RuleMm));
    }

    private static DriveCheck Count(Pulley pulley) => new(
        $"count-teeth:{pulley.Name}", "count-teeth", DriveSetUps.Parts, $"Teeth of {pulley.Name}", $"Count the teeth of {pulley.Name}; mark the first with a pen.",
        "teeth", "It is drawn so.", 20 + (pulley.Teeth / 2), state => DriveCheck.Exactly(state.Built.Motion.FindPulley(pulley.Name)!.Teeth));

    private static string Way(Belt belt) => string.Join(
        ", ", belt.Path.Select((point, at) => string.Create(CultureInfo.InvariantCulture, $"{at + 1} {point.At}{(point.Turn is BeltTurn.None ? "" : point.Turn is BeltTurn.Left ? " to the left" : " to the right")}")));

    private static int FirstDifference(Belt designed, Belt built)
    {
        for (var at = 0; at < designed.Path.Count; at++)
            if (at >= built.Path.Count || !designed.Path[at].Equals(built.Path[at]))
                return at + 1;
        return 0;
    }

    private static double Slope(MotionDesign motion, Belt belt) =>
        belt.Path.Zip(belt.Path.Skip(1), (from, to) => Math.Abs(BeltPlaces.Of(motion, from.At).HeightMm - BeltPlaces.Of(motion, to.At).HeightMm)).Max();

    private static double Longer(DriveState state, Belt belt) =>
        BeltPath.At(state.Built.Motion, BeltOf(state, belt), state.Middle)!.LengthMm - BeltPath.At(state.Design, belt, state.Middle)!.LengthMm;

    private static Belt BeltOf(DriveState state, Belt belt) => state.Built.Motion.Belts.First(other => other.Name == belt.Name);
}
