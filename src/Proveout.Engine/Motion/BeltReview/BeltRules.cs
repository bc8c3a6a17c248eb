using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Looks for what cannot be right in the paths of belts, at several places of the travel.</summary>
public static class BeltRules
{
    // Teeth in mesh for a full rating, and the groove count up to which a smooth idler under the teeth is too small: common practice.
    private const double FewestInMesh = 6;
    private const int SmallestSmooth = 40;
    private const double SlopeMm = 0.5;
    private const double WholeTooth = 0.1;
    private const string Practice = "common practice";

    /// <summary>Every finding.</summary>
    public static ValueList<BeltFinding> Review(MotionDesign motion)
    {
        ArgumentNullException.ThrowIfNull(motion);
        return [.. motion.Belts.SelectMany(belt => OfBelt(motion, belt)), .. BeltRoom.Review(motion), .. OfDrive(motion)];
    }

    private static IEnumerable<BeltFinding> OfBelt(MotionDesign motion, Belt belt)
    {
        var length = BeltLength.Of(motion, belt);
        if (length.Blocked)
            yield return new("belt-blocked", [belt.Name], $"The belt {belt.Name} has no room between two of its points somewhere on the travel.", "Look at their places and at the travel.", "geometry");
        else if (!length.IsConstant)
            yield return new(
                "length-changes", [belt.Name], Text($"The belt {belt.Name} is {length.ShortestMm:0.0} to {length.LongestMm:0.0} mm long over the travel."),
                "Make its moving spans parallel to their axes, and give to one what another takes.", "geometry; a belt does not stretch");
        if (!length.Blocked && belt.Closed && Math.Abs(length.Teeth - Math.Round(length.Teeth)) > WholeTooth)
            yield return new(
                "loop-not-whole", [belt.Name], Text($"The loop {belt.Name} would need {length.Teeth:0.00} teeth."), "Move a pulley, or let one be adjustable.", "geometry");
        if (BeltPath.At(motion, belt, AxisPlaces.Middle(motion)) is { } path)
            foreach (var finding in path.Contacts.SelectMany(contact => OfContact(belt, contact)))
                yield return finding;
        foreach (var finding in Slopes(motion, belt))
            yield return finding;
        if (belt.Path.Any(point => point.HalfTurn))
            yield return new("twist", [belt.Name], $"The belt {belt.Name} has a span with half a turn of twist.", "Give that span twenty widths of length or more, or avoid it.", Practice);
    }

    private static IEnumerable<BeltFinding> OfContact(Belt belt, BeltContact contact)
    {
        var pulley = contact.Pulley;
        if (pulley.HasTeeth && !contact.TeethTouch)
            yield return new(
                "back-on-teeth", [belt.Name, pulley.Name], $"The smooth back of {belt.Name} runs over the teeth of {pulley.Name}.",
                pulley.Kind is PulleyKind.Toothed ? "Look at the side of the teeth and at the way it bends: so it drives nothing." : "Use a smooth idler.", Practice);
        if (pulley is { Kind: PulleyKind.Smooth, Diameter: { } diameter } && contact.TeethTouch && diameter.Millimeters < SmallestSmooth * belt.Pitch.Millimeters / Math.PI)
            yield return new(
                "teeth-on-smooth", [belt.Name, pulley.Name], $"The teeth of {belt.Name} run over the small smooth idler {pulley.Name}: it hums and leaves a pattern of one tooth.",
                Text($"Use a toothed idler, or a smooth one of at least {Math.Ceiling(SmallestSmooth * belt.Pitch.Millimeters / Math.PI):0} mm."), Practice);
        if (pulley.Kind is PulleyKind.Toothed && contact.TeethTouch && contact.TeethInMesh < FewestInMesh)
            yield return new(
                "few-in-mesh", [belt.Name, pulley.Name], Text($"Only {contact.TeethInMesh:0.0} teeth of {pulley.Name} are in mesh."), "Wrap it further, or take more teeth: six and more carry the full rating.", Practice);
    }

    private static IEnumerable<BeltFinding> Slopes(MotionDesign motion, Belt belt)
    {
        for (var at = belt.Closed ? 0 : 1; at < belt.Path.Count; at++)
        {
            var (from, to) = (belt.Path[(at + belt.Path.Count - 1) % belt.Path.Count].At, belt.Path[at].At);
            var slope = BeltPlaces.Of(motion, to).HeightMm - BeltPlaces.Of(motion, from).HeightMm;
            if (Math.Abs(slope) > SlopeMm)
                yield return new(
                    "heights-differ", [belt.Name, from, to], Text($"From {from} to {to} the belt {belt.Name} climbs {slope:0.0} mm: it works against a rim and slides off where there is none."),
                    "Give both one height.", Practice);
        }
    }

    private static IEnumerable<BeltFinding> OfDrive(MotionDesign motion)
    {
        var drive = DriveMotion.Of(motion, AxisPlaces.Middle(motion));
        foreach (var held in drive.Locks)
            yield return new(
                "axes-locked", [.. held.Shares.Select(share => share.Axis)],
                held.Shares.Count == 1 ? $"The belts do not let {held.Shares[0].Axis} move." : $"The belts let {string.Join(" and ", held.Shares.Select(share => share.Axis))} move only together.",
                "Trace each belt against the drawing.", "geometry");
        foreach (var axis in drive.Loose)
            yield return new("axis-loose", [axis], $"No motor holds {axis}.", "Say which pulley or screw moves it, or leave the axis out.", "geometry");
        foreach (var motor in drive.Idle)
            yield return new("motor-idle", [motor], $"{motor} turns without moving an axis.", "Look which belt runs over its pulley, and with which side.", "geometry");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
