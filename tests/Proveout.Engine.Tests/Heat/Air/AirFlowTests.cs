using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Where the curves of fans meet those of openings, against closed forms, MathNet.Numerics and the laws of flow.</summary>
public sealed class AirFlowTests
{
    private const double Density = 1.2;

    private static Between Through(params AirOpening[] openings) => new AirFlows(openings, Density, 0).Through;

    // Closed form: p0 (1 − q/q0) = ρ/2 (K1/A1² + K2/A2²) q².
    private static double Meets(double pressure, double flow, double loss) =>
        (-(pressure / flow) + Math.Sqrt((pressure / flow * (pressure / flow)) + (4 * loss * pressure))) / (2 * loss);

    private static double LossOf(double coefficient, double area) => Density / 2 * coefficient / (area * area);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_fan_with_a_straight_curve_settles_where_the_closed_form_says_whichever_way_it_blows(bool blowsOut)
    {
        var through = Through(SmallBay.Fan("fan", SmallBay.Line, blowsOut), SmallBay.Hole("slots", 0.004));
        var expected = Meets(40, 0.01, LossOf(1, 0.003) + LossOf(2.8, 0.004));
        Assert.Equal(expected, through.Low, 1e-9);
        Assert.Equal(expected, through.High, 1e-9);
    }

    [Fact]
    public void A_fan_with_a_bent_curve_and_a_filter_settles_where_MathNet_finds_it()
    {
        var slots = SmallBay.Hole("slots", 0.004) with { Filter = new(0.006, new(5, 5), 9) };
        var through = Through(SmallBay.Fan("fan", SmallBay.Curve, blowsOut: true), slots);
        double Settled(Func<double, double> filter) => MathNet.Numerics.RootFinding.Brent.FindRoot(
            flow => SmallBay.Curve.PascalsAt(flow) - ((LossOf(1, 0.003) + LossOf(2.8, 0.004)) * flow * flow) - filter(flow), 1e-9, 0.01, 1e-14, 1000);
        // A filter is known at one flow only: the law straight in the flow and that with its square bound it.
        double[] both = [Settled(flow => 5 * flow / 0.006), Settled(flow => 5 * flow * flow / (0.006 * 0.006))];
        Assert.Equal(both.Min(), through.Low, 1e-9);
        Assert.Equal(both.Max(), through.High, 1e-9);
    }

    [Fact]
    public void Two_fans_side_by_side_into_a_free_bay_move_twice_the_air_and_against_a_tight_one_hardly_more_than_one()
    {
        AirOpening[] one = [SmallBay.Fan("a", SmallBay.Line, blowsOut: false)], two = [.. one, SmallBay.Fan("b", SmallBay.Line, blowsOut: false)];
        Assert.Equal(2, Through([.. two, SmallBay.Hole("wide", 1)]).Low / Through([.. one, SmallBay.Hole("wide", 1)]).Low, 1e-3);
        Assert.InRange(Through([.. two, SmallBay.Hole("tight", 1e-4)]).Low / Through([.. one, SmallBay.Hole("tight", 1e-4)]).Low, 1, 1.02);
    }

    [Fact]
    public void One_fan_that_blows_in_and_one_that_draws_out_act_as_two_in_a_row()
    {
        var through = Through(SmallBay.Fan("in", SmallBay.Line, blowsOut: false), SmallBay.Fan("out", SmallBay.Line, blowsOut: true));
        Assert.Equal(Meets(80, 0.01, 2 * LossOf(1, 0.003)), through.Low, 1e-9);
        var stacked = Through(SmallBay.Fan("in", SmallBay.Line.InSeries(2), blowsOut: false), SmallBay.Hole("out", 0.004));
        Assert.Equal(Meets(80, 0.01, LossOf(1, 0.003) + LossOf(2.8, 0.004)), stacked.Low, 1e-9);
    }

    [Fact]
    public void Two_like_fans_that_oppose_each_other_move_nothing()
    {
        var through = Through(SmallBay.Fan("a", SmallBay.Line, blowsOut: false), SmallBay.Fan("b", SmallBay.Line, blowsOut: false));
        Assert.Equal(0, through.High, 1e-12);
        Assert.Equal(40, new AirFlows([SmallBay.Fan("a", SmallBay.Line, blowsOut: false), SmallBay.Fan("b", SmallBay.Line, blowsOut: false)], Density, 0).BayPascals.Low, 1e-6);
    }

    [Fact]
    public void At_another_speed_flow_goes_with_it_and_pressure_with_its_square() => Prop.ForAll<byte>(number =>
    {
        var share = 0.3 + (number / 128.0);
        var (usual, changed) = (Through(SmallBay.Fan("fan", SmallBay.Curve, true), SmallBay.Hole("slots", 0.004)), Through(SmallBay.Fan("fan", SmallBay.Curve.AtSpeed(share), true), SmallBay.Hole("slots", 0.004)));
        return Math.Abs(changed.Low - (share * usual.Low)) < 1e-9;
    }).QuickCheckThrowOnFailure();

    [Fact]
    public void Volume_flow_through_holes_does_not_depend_on_the_density_of_the_air()
    {
        AirOpening[] openings = [SmallBay.Fan("fan", SmallBay.Curve, true), SmallBay.Hole("slots", 0.004)];
        Assert.Equal(new AirFlows(openings, 1.2, 0).Through.Low, new AirFlows(openings, 0.7, 0).Through.Low, 1e-9);
    }

    [Fact]
    public void A_wider_opening_or_a_stronger_fan_never_lessens_the_flow() => Prop.ForAll<byte, byte, byte>((area, more, faster) =>
    {
        var squareMetres = 0.0005 + (area * 0.00004);
        var usual = Through(SmallBay.Fan("fan", SmallBay.Curve, true, 0.1), SmallBay.Hole("slots", squareMetres, 0.05));
        var wider = Through(SmallBay.Fan("fan", SmallBay.Curve, true, 0.1), SmallBay.Hole("slots", squareMetres + (more * 0.00004), 0.05));
        var stronger = Through(SmallBay.Fan("fan", SmallBay.Curve.AtSpeed(1 + (faster / 256.0)), true, 0.1), SmallBay.Hole("slots", squareMetres, 0.05));
        return wider.Low >= usual.Low - 1e-12 && wider.High >= usual.High - 1e-12 && stronger.Low >= usual.Low - 1e-12 && stronger.High >= usual.High - 1e-12;
    }).QuickCheckThrowOnFailure();

    // Every value drawn from the tolerances lies within the limits, also with fans that help, oppose and stand; and a corner reaches them.
    [Fact]
    public void Whatever_the_tolerances_flow_keeps_within_its_limits()
    {
        var random = new Random(7);
        for (var trial = 0; trial < 150; trial++)
        {
            AirOpening[] openings =
            [
                SmallBay.Fan("a", SmallBay.Curve, random.Next(2) == 0, 0.15),
                SmallBay.Fan("b", SmallBay.Line, random.Next(2) == 0, 0.15) is var b && random.Next(4) == 0 ? b with { Fan = b.Fan! with { Stands = true } } : b,
                SmallBay.Hole("c", 0.001 + (0.005 * random.NextDouble()), 0.1),
            ];
            var limits = new AirFlows(openings, Density, 0);
            AirOpening[] drawn = [.. openings.Select(opening => Drawn(opening, random))];
            var one = new AirFlows(drawn, Density, 0);
            Assert.InRange(one.Through.High, limits.Through.Low - 1e-9, limits.Through.High + 1e-9);
            Assert.InRange(one.BayPascals.High, limits.BayPascals.Low - 1e-6, limits.BayPascals.High + 1e-6);
            foreach (var (opening, ends) in drawn.Where(opening => opening.Fan?.Stands != true).Zip(openings.Where(opening => opening.Fan?.Stands != true)))
                Assert.InRange(one.Into(opening).High, limits.Into(ends).Low - 1e-9, limits.Into(ends).High + 1e-9);
        }
    }

    private static AirOpening Drawn(AirOpening opening, Random random) => opening with
    {
        SquareMetres = Point(opening.SquareMetres, random),
        Coefficient = Point(opening.Coefficient, random),
        Fan = opening.Fan is { Stands: false } fan ? fan with { Speed = Point(fan.Speed, random) } : opening.Fan,
    };

    private static Between Point(Between limits, Random random) => limits.At(random.NextDouble()) is var value ? new(value, value) : default;

    [Fact]
    public void Air_joins_and_parts_as_much_comes_in_as_goes_out()
    {
        AirOpening[] openings = [SmallBay.Fan("a", SmallBay.Curve, true), SmallBay.Fan("b", SmallBay.Line, true), SmallBay.Hole("c", 0.003), SmallBay.Hole("d", 0.002)];
        var flows = new AirFlows(openings, Density, 0);
        Assert.Equal(0, openings.Sum(opening => flows.Into(opening).Low), 1e-9);
        Assert.Equal(flows.Through.Low, openings.Skip(2).Sum(opening => flows.Into(opening).Low), 1e-9);
    }

    [Fact]
    public void A_curve_that_rises_is_refused() => Assert.Throws<ArgumentException>(() => FanCurve.Of(40, 0.01, (0.004, 20), (0.006, 25)));
}
