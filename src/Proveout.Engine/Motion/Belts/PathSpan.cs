namespace Proveout.Engine.Motion;

/// <summary>A straight piece of a belt.</summary>
/// <param name="From">The point of the path that it leaves.</param>
/// <param name="To">The point that it leads to.</param>
/// <param name="Start">Where it leaves, on the pitch line.</param>
/// <param name="End">Where it arrives.</param>
public sealed record PathSpan(int From, int To, PlaneSpot Start, PlaneSpot End)
{
    /// <summary>Its length in millimetres.</summary>
    public double LengthMm => (End - Start).Length;

    /// <summary>Its direction, of length 1.</summary>
    internal PlaneSpot Direction => 1 / LengthMm * (End - Start);
}
