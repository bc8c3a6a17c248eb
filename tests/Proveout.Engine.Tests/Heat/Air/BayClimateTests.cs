using Proveout.Engine.Heat;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Balance of heat of a bay against textbooks and closed forms.</summary>
public sealed class BayClimateTests
{
    // A bay with a fan so strong that its flow is given, and walls that nothing is counted on.
    private static BayAir Ventilated(double cubicMetresASecond, double watts, double roomCelsius, double altitudeMetres) => new(
        "box",
        [new AirOpening("in", new(1, 1), new(1, 1)) { Fan = new(FanCurve.Of(1e6, 1, (cubicMetresASecond, 1e6 / 2), (1.0000001 * cubicMetresASecond, 0)), false, new(1, 1)) }, SmallBay.Hole("out", 1)],
        SmallBay.Unknown,
        new(watts, watts),
        watts,
        new(roomCelsius, roomCelsius),
        altitudeMetres,
        [])
    {
        Returned = new(0, 0),
    };

    // Y. A. Çengel, Heat and Mass Transfer, chapter 8, the desktop computer at 3000 m (70.12 kPa) of 80 W whose air may leave at 60 °C in a room of 50 °C; printed solution: 0.007944 kg/s with 1007 J/(kg·K), 0.7337 kg/m³, 0.6497 m³/min.
    [Fact]
    public void The_computer_of_the_textbook_warms_its_air_by_the_ten_kelvin_that_it_was_laid_out_for()
    {
        Assert.Equal(70.12e3, DryAir.PascalsAt(3000), 15.0);
        Assert.Equal(0.7337, DryAir.DensityAt(60, 3000), 1e-3);
        Assert.Equal(10, new BayClimate(Ventilated(0.6497 / 60, 80, 50, 3000)).WorkRise, 0.05);
    }

    // The same chapter: eight boards of 10 W and a fan of 25 W, 10 K: 0.01045 kg/s with 1005 J/(kg·K); at 30 °C around 1.146 kg/m³, so 9.03 l/s leave.
    [Fact]
    public void The_eight_boards_of_the_textbook_warm_their_air_by_ten_kelvin() =>
        Assert.Equal(10, new BayClimate(Ventilated(0.01045 / DryAir.DensityAt(30, 0), 105, 20, 0)).WorkRise, 0.02);

    // A printed rule of enclosure makers, 1.76 W/°C in cubic feet a minute: 200 W and 10 °C ask for 35.2 of 1.699 m³/h each, air of 1.2 kg/m³ (which has 21 °C).
    [Fact]
    public void The_rule_of_thumb_in_cubic_feet_a_minute_is_met() =>
        Assert.Equal(10, new BayClimate(Ventilated(35.2 * 1.6990108 / 3600, 200, 11, 0)).WorkRise, 0.06);

    // Simplified laws for air as textbooks print them: upright 1.42 (ΔT/L)^¼, facing up 1.32, down 0.59 W/(m²·K) (from memory). They rest on other fits, up to a fifth lower, and hold for small surfaces.
    [Fact]
    public void Free_convection_agrees_with_the_simplified_laws_for_air_within_a_fifth()
    {
        foreach (var (rise, length) in new[] { (20.0, 0.15), (40, 0.1) })
        {
            var share = Math.Pow(rise / length, 0.25) * rise;
            Assert.InRange(FreeConvection.Upright(35 + rise, 35, length) / share, 1.42, 1.42 * 6 / 5);
            Assert.InRange(FreeConvection.Up(35 + rise, 35, length) / share, 1.32, 1.32 * 6 / 5);
            Assert.InRange(FreeConvection.Down(35 + rise, 35, length) / share, 0.59, 0.59 * 6 / 5);
        }
    }

    [Fact]
    public void A_closed_bay_is_warmer_the_more_it_holds_and_cooler_with_fans_that_run()
    {
        var closed = SmallBay.Usual with { Openings = [], Walls = SmallBay.Steel };
        var little = new BayClimate(closed with { WorkWatts = 20 });
        var much = new BayClimate(closed with { WorkWatts = 40 });
        Assert.True(much.WorkRise > little.WorkRise && much.WorkRise < 2 * little.WorkRise);
        Assert.True(new BayClimate(SmallBay.Usual with { WorkWatts = 40 }).WorkRise < 0.6 * much.WorkRise);
        Assert.Equal(20, SmallBay.Steel.LeastWatts(30 + little.WorkRise, 30), 1e-6);
    }

    [Fact]
    public void Through_thick_wood_no_more_goes_than_it_conducts_and_a_covered_face_counts_for_nothing()
    {
        var wood = SmallBay.Steel with { Make = new BayWall(WallMaterial.Wood, Length.FromMillimeters(50), []) };
        var area = 2 * ((0.4 * 0.3) + (0.4 * 0.1) + (0.3 * 0.1));
        Assert.InRange(wood.LeastWatts(60, 20), 0.3 * area * 0.13 / 0.05 * 40, area * 0.13 / 0.05 * 40);
        var covered = SmallBay.Steel with { Make = SmallBay.Steel.Make! with { Covered = [BayFace.Back, BayFace.Front] } };
        Assert.True(covered.LeastWatts(50, 20) < 0.6 * SmallBay.Steel.LeastWatts(50, 20));
        Assert.True(SmallBay.Steel.MostWatts(50, 20) > SmallBay.Steel.LeastWatts(50, 20));
    }

    [Fact]
    public void Without_openings_and_with_walls_that_are_not_known_nothing_is_counted_on() =>
        Assert.Equal(double.PositiveInfinity, new BayClimate(SmallBay.Usual with { Openings = [], Walls = SmallBay.Unknown }).WorkRise);

    [Fact]
    public void Heat_height_and_returned_air_make_it_warmer()
    {
        var usual = new BayClimate(SmallBay.Usual).WorkRise;
        Assert.True(new BayClimate(SmallBay.Usual with { WorkWatts = 90 }).WorkRise > usual);
        Assert.True(new BayClimate(SmallBay.Usual with { AltitudeMetres = 2000 }).WorkRise > usual);
        Assert.True(new BayClimate(SmallBay.Usual with { Returned = new(0, 0.5) }).WorkRise > usual);
        Assert.True(new BayClimate(SmallBay.Usual).RestRise is { Low: > 0 } rest && rest.Low < rest.High && rest.High < usual);
    }

    [Fact]
    public void Whatever_the_tolerances_the_rise_keeps_within_its_limits()
    {
        var limits = new BayClimate(SmallBay.Usual).RestRise;
        var random = new Random(11);
        for (var trial = 0; trial < 25; trial++)
        {
            double Drawn(Between between) => between.At(random.NextDouble());
            Between Point(Between between) => Drawn(between) is var value ? new(value, value) : default;
            var (watts, room, returned) = (Drawn(SmallBay.Usual.RestWatts), Point(SmallBay.Usual.RoomCelsius), Point(SmallBay.Usual.Returned));
            var one = SmallBay.Usual with
            {
                RestWatts = new(watts, watts),
                RoomCelsius = room,
                Returned = returned,
                Openings = [.. SmallBay.Usual.Openings.Select(opening => opening with { SquareMetres = Point(opening.SquareMetres), Coefficient = Point(opening.Coefficient), Fan = opening.Fan is { } fan ? fan with { Speed = Point(fan.Speed) } : null })],
            };
            var rise = new BayClimate(one).RestRise;
            Assert.InRange(rise.Low, limits.Low - 1e-9, limits.High);
            Assert.InRange(rise.High, limits.Low, limits.High + 1e-9);
        }
    }

    [Fact]
    public void A_supply_bears_what_its_derating_leaves_and_a_part_without_one_its_limit()
    {
        var supply = new BayPart("T1", 5, 50, "its type") { Derating = new(0.025, 0.6) };
        Assert.Equal(66, supply.BearsUpTo, 1e-9);
        Assert.Equal(0.75, supply.ShareAt(60), 1e-12);
        Assert.True(supply.Bears(65.9) && !supply.Bears(66.1));
        Assert.True(SmallBay.Usual.Parts[0].Bears(60) && !SmallBay.Usual.Parts[0].Bears(60.1));
    }
}
