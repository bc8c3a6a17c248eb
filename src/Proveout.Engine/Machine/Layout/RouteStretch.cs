namespace Proveout.Engine.Machine;

/// <summary>The stretch of a route that a conductor runs through.</summary>
/// <param name="Conductor">The conductor.</param>
/// <param name="FromMm">Where it enters, along the route's centre line.</param>
/// <param name="ToMm">Where it leaves.</param>
public readonly record struct RouteStretch(Conductor Conductor, double FromMm, double ToMm)
{
    /// <summary>True when another conductor lies beside it somewhere.</summary>
    public bool Meets(RouteStretch other) => FromMm < other.ToMm && other.FromMm < ToMm;
}
