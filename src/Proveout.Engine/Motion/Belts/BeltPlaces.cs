using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Where what a belt touches is, and how it moves with the axes.</summary>
internal static class BeltPlaces
{
    public static (Riding Across, Riding Up, double HeightMm, Pulley? Pulley) Of(MotionDesign motion, string name) =>
        (motion.FindPulley(name), motion.FindAnchor(name)) switch
        {
            ({ } pulley, _) => (pulley.Across, pulley.Up, pulley.Height.Millimeters, pulley),
            (_, { } anchor) => (anchor.Across, anchor.Up, anchor.Height.Millimeters, null),
            _ => throw new ArgumentException($"The design has no pulley or anchor {name}.", nameof(name)),
        };

    public static PlaneSpot SpotOf(MotionDesign motion, string name, ValueList<double> places) =>
        Of(motion, name) is var place ? new(ValueOf(motion, place.Across, places), ValueOf(motion, place.Up, places)) : default;

    /// <summary>How far it moves for a millimetre of an axis.</summary>
    public static PlaneSpot MoveOf(MotionDesign motion, string name, string axis) =>
        Of(motion, name) is var place ? new(ShareOf(place.Across, axis), ShareOf(place.Up, axis)) : default;

    /// <summary>Pitch radius of a toothed pulley, ISO 5294.</summary>
    public static double PitchRadiusMm(Pulley pulley) => pulley.Teeth * pulley.Pitch!.Value.Millimeters / (2 * Math.PI);

    /// <summary>Radius of the belt's pitch line on a pulley.</summary>
    public static double RadiusMm(Belt belt, Pulley pulley, bool teethTouch) =>
        pulley.HasTeeth && teethTouch ? PitchRadiusMm(pulley)
        : OuterRadiusMm(belt, pulley) + (teethTouch ? belt.TipsMm : belt.BackMm);

    // The pitch line of a toothed pulley lies outside its teeth, by as much as the belt's pitch line lies above its tooth root.
    private static double OuterRadiusMm(Belt belt, Pulley pulley) =>
        pulley.HasTeeth ? PitchRadiusMm(pulley) - PitchLineMm(belt) : pulley.Diameter!.Value.Millimeters / 2;

    // Of a 2 mm curvilinear belt 0.254 mm (from memory); others in proportion.
    private static double PitchLineMm(Belt belt) => 0.127 * belt.Pitch.Millimeters;

    private static double ValueOf(MotionDesign motion, Riding riding, ValueList<double> places) =>
        riding.Fixed.Millimeters + riding.Shares.Sum(share => share.Factor * places[IndexOf(motion, share.Axis)]);

    private static double ShareOf(Riding riding, string axis) => riding.Shares.Where(share => share.Axis == axis).Sum(share => share.Factor);

    private static int IndexOf(MotionDesign motion, string axis) => motion.Axes.Index().First(item => item.Item.Name == axis).Index;
}
