using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>The sizes of a test piece.</summary>
/// <param name="Making">How it is made.</param>
/// <param name="RingMm">Distance of opposite sides of the double ring.</param>
/// <param name="UprightMm">Height and width of the upright parts.</param>
/// <param name="ThicknessMm">Thickness of the double ring.</param>
/// <param name="LineMm">Width of one laid line.</param>
public sealed record TestPieceSize(PieceMaking Making, double RingMm, double UprightMm, double ThicknessMm, double LineMm)
{
    /// <summary>Smallest double ring: below it the jaws of a calliper do not enter its inner window.</summary>
    public const double LeastRingMm = 50;

    /// <summary>Largest double ring: beyond it material is spent and little is learnt.</summary>
    public const double MostRingMm = 200;

    /// <summary>Between parts.</summary>
    internal const double GapMm = 5;

    // What a machine keeps free at each end of its travel (common practice).
    private const double EdgeMm = 5;

    /// <summary>Room that the piece takes.</summary>
    public SpaceVector Room => Making switch
    {
        PieceMaking.Printed => new(Math.Max(RingMm, (1.8 * UprightMm) + (2 * GapMm)), RingMm + GapMm + (0.2 * UprightMm) + GapMm + Math.Max(UprightMm, (0.6 * UprightMm) + GapMm), UprightMm),
        PieceMaking.Milled => new(RingMm, RingMm + GapMm + (0.3 * UprightMm), Math.Max(ThicknessMm, Stair.HeightOf(this))),
        _ => new(RingMm, RingMm + GapMm + (0.5 * UprightMm), Math.Max(ThicknessMm, 0.2 * UprightMm)),
    };

    /// <summary>The piece that belongs to a double ring: the upright parts are four tenths of it, in whole layers for each fifth of their height.</summary>
    public static TestPieceSize OfRing(PieceMaking making, double ringMm, double thicknessMm, double lineMm, double layerMm)
    {
        var step = 5 * layerMm;
        return new(making, ringMm, Math.Floor((0.4 * ringMm / step) + 1e-9) * step, thicknessMm, lineMm);
    }

    /// <summary>The largest piece that a machine can make and a calliper can span; or why there is none.</summary>
    /// <param name="making">How it is made.</param>
    /// <param name="travel">Travel of the machine.</param>
    /// <param name="reachMm">Largest length that the calliper spans.</param>
    /// <param name="thicknessMm">Thickness of the double ring.</param>
    /// <param name="lineMm">Width of one laid line.</param>
    /// <param name="layerMm">Height of a layer: heights are whole layers.</param>
    public static (TestPieceSize? Size, string? Problem) Largest(PieceMaking making, SpaceVector travel, double reachMm, double thicknessMm, double lineMm, double layerMm)
    {
        for (var ring = Math.Floor(Math.Min(MostRingMm, reachMm - 10) / 10) * 10; ring >= LeastRingMm; ring -= 10)
        {
            var size = OfRing(making, ring, thicknessMm, lineMm, layerMm);
            var room = size.Room;
            if (size.UprightMm >= 0.3 * ring && room.X <= travel.X - (2 * EdgeMm) && room.Y <= travel.Y - (2 * EdgeMm) && room.Z <= travel.Z)
                return (size, null);
        }

        var least = new TestPieceSize(making, LeastRingMm, 0.4 * LeastRingMm, thicknessMm, lineMm).Room;
        return (null, string.Create(
            CultureInfo.InvariantCulture,
            $"The smallest piece needs {least.X + (2 * EdgeMm):0} mm of travel along X, {least.Y + (2 * EdgeMm):0} mm along Y and {least.Z:0} mm along Z, layers of at most 1 mm, and a calliper of {LeastRingMm + 10:0} mm."));
    }
}
