using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Where pulleys and anchors are with the axes in a place, for drawings.</summary>
public static class BeltSpots
{
    /// <summary>The spot of a pulley's centre or an anchor.</summary>
    public static PlaneSpot Of(MotionDesign motion, string name, ValueList<double> places) => BeltPlaces.SpotOf(motion, name, places);

    /// <summary>Radius of a pulley: pitch radius when it has teeth.</summary>
    public static double RadiusMm(Pulley pulley)
    {
        ArgumentNullException.ThrowIfNull(pulley);
        return pulley.HasTeeth ? BeltPlaces.PitchRadiusMm(pulley) : pulley.Diameter!.Value.Millimeters / 2;
    }
}
