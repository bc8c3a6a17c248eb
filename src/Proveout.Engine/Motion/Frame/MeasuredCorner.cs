namespace Proveout.Engine.Motion;

/// <summary>A corner measured with a square, or with a dial along parallels: how far the second side stands open at the end of a leg.</summary>
/// <param name="Corner">Name of the corner.</param>
/// <param name="First">Name of the point that the fixed side leads to.</param>
/// <param name="Second">Name of the point that the other side leads to.</param>
/// <param name="OpenMillimetres">By how much the corner is wider than a right angle at the end of the leg; negative when it is narrower.</param>
/// <param name="LegMillimetres">Length of the leg.</param>
public sealed record MeasuredCorner(string Corner, string First, string Second, Uncertain OpenMillimetres, double LegMillimetres)
{
    /// <summary>Such as <c>square at A</c>.</summary>
    public string Name => $"square at {Corner}";

    /// <summary>The angle beyond a right one, in rad.</summary>
    public Uncertain Angle => new(OpenMillimetres.Value / LegMillimetres, OpenMillimetres.Standard / LegMillimetres);
}
