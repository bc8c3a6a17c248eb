namespace Proveout.Engine.Machine;

/// <summary>A stretch of a conductor's way.</summary>
/// <param name="Route">The route that it runs through; null between routes and terminals.</param>
/// <param name="Surface">The surface that it lies on; empty when it lies on none.</param>
/// <param name="Corners">Its corners on the surface, in the order of travel; empty when it lies on none.</param>
/// <param name="LengthMm">Its length.</param>
/// <param name="FromMm">Where on the route's centre line it begins; 0 when the route lies on no surface.</param>
/// <param name="ToMm">Where on the route's centre line it ends; the whole length when the route lies on no surface.</param>
public sealed record WayLeg(string? Route, string Surface, IReadOnlyList<SpotMm> Corners, double LengthMm, double FromMm, double ToMm);
