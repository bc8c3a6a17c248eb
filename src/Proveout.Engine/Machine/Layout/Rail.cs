namespace Proveout.Engine.Machine;

/// <summary>A mounting rail, IEC 60715, along a surface.</summary>
/// <param name="Name">Name, unique among surfaces and rails of the machine.</param>
/// <param name="On">The surface that it is fixed to.</param>
/// <param name="From">One end of its centre line: the left one, or the lower one.</param>
/// <param name="To">The other end; level with the first, or straight above it.</param>
public sealed record Rail(string Name, string On, PlanePoint From, PlanePoint To)
{
    /// <summary>True when it runs from left to right.</summary>
    public bool IsLevel => From.Up.Millimeters == To.Up.Millimeters;
}
