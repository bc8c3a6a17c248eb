using Proveout.Engine.Heat;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Bays to try things on.</summary>
internal static class SmallBay
{
    public static readonly FanCurve Line = FanCurve.Of(40, 0.01);

    public static readonly FanCurve Curve = FanCurve.Of(40, 0.01, (0.002, 36), (0.005, 22), (0.008, 12));

    public static readonly BayWalls Steel = new(0.4, 0.3, 0.1, new BayWall(WallMaterial.Steel, Length.FromMillimeters(1.5), []));

    public static readonly BayWalls Unknown = new(0.4, 0.3, 0.1, null);

    public static AirOpening Hole(string name, double squareMetres, double share = 0) =>
        new(name, Between.Around(squareMetres, share), share > 0 ? new(2.4, 3.2) : new(2.8, 2.8));

    public static AirOpening Fan(string name, FanCurve curve, bool blowsOut, double share = 0, double coefficient = 1) =>
        new(name, Between.Around(0.003, share), Between.Around(coefficient, share))
        {
            Fan = new OpeningFan(curve, blowsOut, Between.Around(1, share)) { Amperes = 0.08, TurnsAMinute = 4000, Part = name.ToUpperInvariant() },
        };

    /// <summary>A fan that draws out, slots with a filter that let in, and 40 to 60 W.</summary>
    public static BayAir Usual { get; } = new(
        "bay",
        [Fan("fan", Line, blowsOut: true, 0.1), Hole("slots", 0.004, 0.05) with { Filter = new(0.01, new(4, 6), 12) }],
        Steel,
        new(40, 60),
        75,
        new(15, 30),
        0,
        [new("A1", 5, 60, "its data sheet"), new("T1", 5, 50, "its type") { Derating = new(0.025, 0.6) }]);
}
