using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Machine;
using Proveout.Engine.Motion;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Motion.Belts;

public sealed class BeltPathTests
{
    private static readonly Config Quick = Config.QuickThrowOnFailure.WithMaxTest(100);

    // Open belt, exact: L = 2 √(C² − ((D−d)/2)²) + π (D+d)/2 + (D−d) asin((D−d)/2C), d = z p/π; worked to five decimals by hand.
    [Theory]
    [InlineData(100, 20, 60, 2, 281.62334, 9.1872)]
    [InlineData(100, 20, 20, 2, 240.00000, 10)]
    [InlineData(40, 16, 60, 2, 160.95600, 6.1781)]
    [InlineData(30, 16, 80, 2, 170.45935, 4.1982)]
    [InlineData(250, 20, 40, 5, 651.01355, 9.5944)]
    public void A_loop_over_two_toothed_pulleys_has_the_length_and_mesh_of_the_formula(double apart, int teeth, int other, double pitch, double length, double mesh)
    {
        var path = TwoPulleys.Toothed(apart, teeth, other, pitch);

        Assert.Equal(length, path.LengthMm, 5);
        Assert.Equal(mesh, path.Contacts[0].TeethInMesh, 4);
    }

    // Worked example: pulleys of 500 mm and 1600 mm, shafts parallel at 12 m, open belt 27.32 m.
    // https://www.sarthaks.com/509872 (an exercise of machine theory; it rounds to a centimetre).
    [Fact]
    public void A_published_worked_example_of_an_open_belt_comes_out() =>
        Assert.Equal(27.32, TwoPulleys.Smooth(12_000, 500, 1600, crossed: false)!.LengthMm / 1000, 2);

    [Fact]
    public void A_crossed_belt_has_the_length_of_the_formula() => Check.One(Quick, Prop.ForAll<ushort, ushort, ushort>((one, two, gap) =>
    {
        var (d, e) = (1.0 + (one % 500), 1.0 + (two % 500));
        var apart = ((d + e) / 2) + 1 + (gap % 1000);
        // Crossed: L = 2 √(C² − s²) + 2 s (π/2 + asin(s/C)) with s the sum of the radii.
        var sum = (d + e) / 2;
        var expected = (2 * Math.Sqrt((apart * apart) - (sum * sum))) + (2 * sum * ((Math.PI / 2) + Math.Asin(sum / apart)));

        Assert.Equal(expected, TwoPulleys.Smooth(apart, d, e, crossed: true)!.LengthMm, 6);
    }));

    [Fact]
    public void Every_belt_of_the_gantry_and_of_the_four_corner_lift_keeps_its_length_over_the_whole_travel()
    {
        var motion = Repository.Design("alderbrook").Motion;

        Assert.Equal(10, motion.Belts.Count);
        Assert.All(motion.Belts, belt => Assert.True(BeltLength.Of(motion, belt).IsConstant, belt.Name));
    }

    [Theory]
    [InlineData(3, 7)]
    [InlineData(40, 260)]
    [InlineData(299, 150)]
    public void The_gradient_of_a_length_is_that_of_finite_differences(double x, double y)
    {
        var motion = Misled();
        var belt = motion.Belts.First(belt => belt.Name == "upper");
        foreach (var (index, axis) in motion.Axes.Index())
        {
            double LengthAt(double step) => BeltPath.At(motion, belt, [.. new[] { x, y, 100 }.Select((place, at) => place + (at == index ? step : 0))])!.LengthMm;

            Assert.Equal((LengthAt(1e-4) - LengthAt(-1e-4)) / 2e-4, BeltLength.Gradient(motion, BeltPath.At(motion, belt, [x, y, 100])!, axis.Name), 6);
        }
    }

    [Fact]
    public void A_belt_listed_from_its_other_end_has_the_same_length()
    {
        var motion = Repository.Design("alderbrook").Motion;
        var places = AxisPlaces.Middle(motion);
        foreach (var belt in motion.Belts)
            Assert.Equal(BeltPath.At(motion, belt, places)!.LengthMm, BeltPath.At(motion, Turned(belt), places)!.LengthMm, 9);
    }

    [Fact]
    public void A_machine_moved_and_turned_in_its_plane_has_belts_of_the_same_length() => Check.One(Quick, Prop.ForAll<short, short, byte>((across, up, angle) =>
    {
        var motion = Repository.Design("alderbrook").Motion;
        var moved = Moved(motion, across, up, angle);
        double[] places = [12, 200, 30];
        foreach (var (belt, other) in motion.Belts.Zip(moved.Belts))
            Assert.Equal(BeltPath.At(motion, belt, [.. places])!.LengthMm, BeltPath.At(moved, other, [.. places])!.LengthMm, 6);
    }));

    [Fact]
    public void Circles_that_overlap_leave_no_room_for_a_belt_between_them()
    {
        Assert.Null(BeltPathOrNull(apart: 20, one: 30, two: 30, crossed: true));
        Assert.NotNull(BeltPathOrNull(apart: 20, one: 30, two: 30, crossed: false));
    }

    private static BeltPath? BeltPathOrNull(double apart, double one, double two, bool crossed) => TwoPulleys.Smooth(apart, one, two, crossed);

    // The upper belt straight from the left anchor to its motor: its length then depends on both axes.
    private static MotionDesign Misled()
    {
        var motion = Repository.Design("alderbrook").Motion;
        return motion with
        {
            Belts = [.. motion.Belts.Select(belt => belt.Name == "upper" ? belt with { Path = [.. belt.Path.Where(point => point.At != "beam-left-upper")] } : belt)],
        };
    }

    private static Belt Turned(Belt belt)
    {
        var turned = belt.Path.Reverse().Select(point => point with { Turn = point.Turn switch { BeltTurn.Left => BeltTurn.Right, BeltTurn.Right => BeltTurn.Left, _ => BeltTurn.None } });
        return belt with { Path = [.. turned], Teeth = belt.Teeth is BeltSide.Left ? BeltSide.Right : BeltSide.Left };
    }

    private static MotionDesign Moved(MotionDesign motion, double across, double up, double angle)
    {
        var (sine, cosine) = Math.SinCos(angle);
        (Riding, Riding) Place(Riding x, Riding y) => (Mixed(x, cosine, y, -sine, across), Mixed(x, sine, y, cosine, up));
        return motion with
        {
            Pulleys = [.. motion.Pulleys.Select(pulley => Place(pulley.Across, pulley.Up) is var (x, y) ? pulley with { Across = x, Up = y } : pulley)],
            Anchors = [.. motion.Anchors.Select(anchor => Place(anchor.Across, anchor.Up) is var (x, y) ? anchor with { Across = x, Up = y } : anchor)],
        };
    }

    private static Riding Mixed(Riding one, double factor, Riding two, double otherFactor, double moved) => new(
        (factor * one.Fixed) + (otherFactor * two.Fixed) + UnitsNet.Length.FromMillimeters(moved),
        [.. one.Shares.Select(share => share with { Factor = share.Factor * factor }), .. two.Shares.Select(share => share with { Factor = share.Factor * otherFactor })]);
}
