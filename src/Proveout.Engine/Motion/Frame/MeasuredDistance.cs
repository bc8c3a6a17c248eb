namespace Proveout.Engine.Motion;

/// <summary>A distance between two points, by tape or caliper.</summary>
/// <param name="From">Name of a point.</param>
/// <param name="To">Name of another.</param>
/// <param name="Millimetres">What was read, with its standard uncertainty.</param>
public sealed record MeasuredDistance(string From, string To, Uncertain Millimetres)
{
    /// <summary>Such as <c>A-C</c>.</summary>
    public string Name => $"{From}-{To}";
}
