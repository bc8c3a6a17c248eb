namespace Proveout.Engine.Heat;

/// <summary>A bay with what warms its air and what carries that away, each quantity with its tolerance.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Openings">Its ways of air.</param>
/// <param name="Walls">Its walls.</param>
/// <param name="RestWatts">Heat that is given off in it at rest: motors stand, heaters hold.</param>
/// <param name="WorkWatts">Most heat that is given off in it, with everything at work.</param>
/// <param name="RoomCelsius">Temperature of the room.</param>
/// <param name="AltitudeMetres">Height above the sea.</param>
/// <param name="Parts">Parts that the air may become too warm for.</param>
public sealed record BayAir(
    string Name, IReadOnlyList<AirOpening> Openings, BayWalls Walls, Between RestWatts, double WorkWatts, Between RoomCelsius, double AltitudeMetres, IReadOnlyList<BayPart> Parts)
{
    /// <summary>Share of the air coming in that carries no heat away, because it has just left or passes the parts by: some of it always does; common practice.</summary>
    public Between Returned { get; init; } = new(0, 0.1);

    /// <summary>True when mains is in it, so that its lid keeps people from it.</summary>
    public bool HoldsMains { get; init; }

    /// <summary>The same bay at any time until its filters are to be changed.</summary>
    public BayAir InUse => this with { Openings = [.. Openings.Select(opening => opening with { Filter = opening.Filter?.InUse })] };
}
