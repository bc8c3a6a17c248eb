namespace Proveout.Engine.Motion;

/// <summary>Twist of a frame on four feet, from heights of its corners above a flat slab or a level line.</summary>
/// <param name="StandsOff">By how much a foot stands off the plane of the other three, in mm; positive when the first and third corners are high.</param>
public sealed record FrameTwist(Uncertain StandsOff)
{
    /// <summary>Of the heights of four corners around the frame, in mm.</summary>
    public static FrameTwist Of(Uncertain first, Uncertain second, Uncertain third, Uncertain fourth) => new(new Uncertain(
        first.Value - second.Value + third.Value - fourth.Value,
        Uncertain.Combine(first.Standard, second.Standard, third.Standard, fourth.Standard)));
}
