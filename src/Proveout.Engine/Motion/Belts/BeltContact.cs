using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Where a belt bends round a pulley.</summary>
/// <param name="Point">The point of the path.</param>
/// <param name="Pulley">The pulley.</param>
/// <param name="Turn">Which way it bends.</param>
/// <param name="Centre">The pulley's centre.</param>
/// <param name="RadiusMm">Radius of the belt's pitch line.</param>
/// <param name="WrapRadians">Angle of wrap.</param>
/// <param name="TeethTouch">True when the belt's teeth face the pulley.</param>
public sealed record BeltContact(int Point, Pulley Pulley, BeltTurn Turn, PlaneSpot Centre, double RadiusMm, double WrapRadians, bool TeethTouch)
{
    /// <summary>Length of belt on the pulley, in millimetres.</summary>
    public double LengthMm => RadiusMm * WrapRadians;

    /// <summary>Teeth of the pulley in mesh: z θ / 2π; none when its back or a smooth idler touches.</summary>
    public double TeethInMesh => TeethTouch && Pulley.HasTeeth ? Pulley.Teeth * WrapRadians / (2 * Math.PI) : 0;
}
