using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>What a bay loses through its walls: from its air to the wall, through it, and from there to the room by free convection and radiation.</summary>
/// <param name="WidthMetres">Width inside.</param>
/// <param name="HeightMetres">Height inside.</param>
/// <param name="DepthMetres">Depth inside.</param>
/// <param name="Make">What the walls are; null when not known: then nothing is counted on, and as much may go through as through bare metal.</param>
public sealed record BayWalls(double WidthMetres, double HeightMetres, double DepthMetres, BayWall? Make)
{
    // Correlations are right to about a fifth, and edges, screws and feet add: as for heated bodies.
    private static readonly Between Share = new(0.75, 1.3);

    // What moving air and the glow of warm parts may add inside, in W/(m²·K): common tables give 5 to 15 for air that a small fan stirs.
    private const double StirredInside = 15;

    // A face that lies against something loses nothing that is counted on, and may lose half of what a free one does.
    private const double CoveredMost = 0.5;

    /// <summary>Watts that surely go through the walls.</summary>
    /// <param name="airCelsius">Temperature of the air inside, not below the room's.</param>
    /// <param name="roomCelsius">Temperature of the room.</param>
    public double LeastWatts(double airCelsius, double roomCelsius) => Make is null ? 0
        : Share.Low * Enum.GetValues<BayFace>().Where(face => !Make.Covered.Contains(face)).Sum(face => Area(face) * Flux(face, airCelsius, roomCelsius, Emissivity.Low, 0));

    /// <summary>Most watts that may go through the walls.</summary>
    public double MostWatts(double airCelsius, double roomCelsius) =>
        Share.High * Enum.GetValues<BayFace>().Sum(face => (Make?.Covered.Contains(face) == true ? CoveredMost : 1) * Area(face) * Flux(face, airCelsius, roomCelsius, Emissivity.High, StirredInside));

    // W/(m·K) over thickness: common tables; a wall that is not known may be sheet metal.
    private double Conductance => Make is null ? 1e5 : ConductivityOf(Make.Material) / Make.Thickness.Meters;

    // Common tables: paint, plastic and wood 0.8 to 0.95; bare aluminium from 0.05.
    private Between Emissivity => Make?.Material == WallMaterial.Aluminium ? new(0.05, 0.95) : new(0.8, 0.95);

    private static double ConductivityOf(WallMaterial material) => material switch
    {
        WallMaterial.Steel => 50,
        WallMaterial.Aluminium => 200,
        WallMaterial.Plastic => 0.2,
        _ => 0.13,
    };

    private double Area(BayFace face) => face switch
    {
        BayFace.Front or BayFace.Back => WidthMetres * HeightMetres,
        BayFace.Left or BayFace.Right => HeightMetres * DepthMetres,
        _ => WidthMetres * DepthMetres,
    };

    // W/m²: what reaches the inner face, goes through, and leaves the outer one, at the one temperature of the inner face where these agree.
    private double Flux(BayFace face, double air, double room, double emissivity, double stirred)
    {
        if (air <= room)
            return 0;
        double Inner(double wall) => Convection(face, air, wall) + (stirred * (air - wall));
        double Outer(double wall) => Convection(face, wall, room) + FreeConvection.Radiation(wall, room, emissivity);
        var inside = RisingRoot.Of(
            wall =>
            {
                var through = Inner(wall);
                return Outer(Math.Max(room, wall - (through / Conductance))) - through;
            },
            (air + room) / 2,
            (air - room) / 8);
        return Inner(inside);
    }

    // Warm air under a cold top turns over as air does on a hot one; warm air over a cold bottom lies still, as under a hot one. So each face has one law for both of its sides.
    private double Convection(BayFace face, double warm, double cold)
    {
        var length = WidthMetres * DepthMetres / (2 * (WidthMetres + DepthMetres));
        return face switch
        {
            BayFace.Top => FreeConvection.Up(warm, cold, length),
            BayFace.Bottom => FreeConvection.Down(warm, cold, length),
            _ => FreeConvection.Upright(warm, cold, HeightMetres),
        };
    }
}
