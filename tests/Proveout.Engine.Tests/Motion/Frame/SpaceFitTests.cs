using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class SpaceFitTests
{
    // A box of 400 × 300 × 350 mm, base A to D, top E to H above them.
    private static readonly SpacePoint[] Box =
    [
        new("A", 0, 0, 0), new("B", 400, 0, 0), new("C", 400, 300, 0), new("D", 0, 300, 0),
        new("E", 0, 0, 350), new("F", 400, 0, 350), new("G", 400, 300, 350), new("H", 0, 300, 350),
    ];

    private static readonly SpacePoint[] Base = Box[..4];

    private static SpacePoint[] With(SpacePoint[] points, string name, double x, double y, double z) =>
        [.. points.Select(point => point.Name == name ? point with { XMillimetres = point.XMillimetres + x, YMillimetres = point.YMillimetres + y, ZMillimetres = point.ZMillimetres + z } : point)];

    // Every pair of corners, measured in the real frame.
    private static MeasuredDistance[] Tape(SpacePoint[] real, double standard = 0.1, Func<double>? error = null) =>
    [
        .. from one in Enumerable.Range(0, real.Length)
           from other in Enumerable.Range(one + 1, real.Length - one - 1)
           select new MeasuredDistance(real[one].Name, real[other].Name, new(Between(real[one], real[other]) + (error?.Invoke() ?? 0), standard)),
    ];

    private static double Between(SpacePoint one, SpacePoint other) => Math.Sqrt(
        Math.Pow(one.XMillimetres - other.XMillimetres, 2) + Math.Pow(one.YMillimetres - other.YMillimetres, 2) + Math.Pow(one.ZMillimetres - other.ZMillimetres, 2));

    [Fact]
    public void A_frame_as_drawn_has_every_corner_in_its_place()
    {
        var fit = SpaceFit.Fit(Box, Tape(Box)).Fit!;

        Assert.All(fit.Offsets, offset => Assert.Equal(0, offset.Distance.Value, 9));
        Assert.Null(fit.OutOfPlace);
        Assert.Equal(28 - 18, fit.Redundancy);
        Assert.Equal(0, fit.Twist!.Value.Value, 9);
    }

    [Theory]
    [InlineData("G", 2, -1, 1.5)]
    [InlineData("B", 0, 0, 3)]
    [InlineData("H", -2.5, 0, 0)]
    public void The_corner_that_is_out_of_place_is_named_with_its_way_off(string name, double x, double y, double z)
    {
        var (corner, others) = SpaceFit.Fit(Box, Tape(With(Box, name, x, y, z))).Fit!.OutOfPlace!.Value;

        Assert.Equal(name, corner.Point);
        Assert.Equal((x, y, z), (Math.Round(corner.Right.Value, 1), Math.Round(corner.Back.Value, 1), Math.Round(corner.Up.Value, 1)));
        Assert.InRange(others, 0, 0.02);
    }

    [Fact]
    public void A_frame_that_stands_elsewhere_and_is_turned_is_in_place()
    {
        var (cosine, sine) = (Math.Cos(0.3), Math.Sin(0.3));
        SpacePoint[] moved = [.. Box.Select(point => point with { XMillimetres = (cosine * point.XMillimetres) - (sine * point.ZMillimetres) + 50, ZMillimetres = (sine * point.XMillimetres) + (cosine * point.ZMillimetres) })];

        Assert.All(SpaceFit.Fit(Box, Tape(moved)).Fit!.Offsets, offset => Assert.Equal(0, offset.Distance.Value, 6));
    }

    [Fact]
    public void Heights_over_a_slab_tell_the_twist_of_a_base_whatever_the_slab_does()
    {
        // Corner C 2 mm high; the slab lies 20 mm below and 1 mm in 100 mm aslant.
        SpacePoint[] drawn = [.. Base.Select(point => point with { Height = new(20 + (0.01 * point.XMillimetres) + (point.Name == "C" ? 2 : 0), 0.05) })];

        var fit = SpaceFit.Fit(drawn, Tape(Base)).Fit!;

        Assert.Equal(2, fit.Twist!.Value.Value, 2);
        Assert.Equal(0.05 * 2, fit.Twist!.Value.Standard, 3);
    }

    [Fact]
    public void A_base_by_tape_alone_is_asked_for_heights_and_an_open_box_for_diagonals()
    {
        var flat = SpaceFit.Fit(Base, Tape(Base));
        var open = SpaceFit.Fit(Box, [.. Tape(Box).Where(distance => Math.Abs(distance.Millimetres.Value - 400) < 1 || Math.Abs(distance.Millimetres.Value - 300) < 1 || Math.Abs(distance.Millimetres.Value - 350) < 1)]);

        Assert.Contains("the heights of all corners over a flat slab", flat.Problem!, StringComparison.Ordinal);
        Assert.Contains("Measure A-C and", open.Problem!, StringComparison.Ordinal);
        Assert.DoesNotContain("heights", open.Problem!, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_asked_for_holds_the_frame()
    {
        MeasuredDistance[] edges = [.. Tape(Box).Where(distance => Math.Abs(distance.Millimetres.Value - 400) < 1 || Math.Abs(distance.Millimetres.Value - 300) < 1 || Math.Abs(distance.Millimetres.Value - 350) < 1)];
        var asked = SpaceFit.Fit(Box, edges).Problem!.Split("Measure ")[1].Split(" too;")[0].Split(" and ");

        Assert.NotNull(SpaceFit.Fit(Box, [.. edges, .. Tape(Box).Where(distance => asked.Contains(distance.Name))]).Fit);
        Assert.Equal(18 - 12, asked.Length);
    }

    [Fact]
    public void A_misread_tape_is_named()
    {
        MeasuredDistance[] tape = [.. Tape(Box).Select(distance => distance.Name == "B-H" ? distance with { Millimetres = new(distance.Millimetres.Value + 5, 0.1) } : distance)];

        Assert.Equal("B-H", SpaceFit.Fit(Box, tape).Fit!.Contradiction);
    }

    // 200 frames with random readings: offsets over their stated uncertainty scatter as they should (JCGM 101:2008 in spirit).
    [Fact]
    public void Stated_uncertainties_are_those_of_repeated_measuring()
    {
        var random = new Random(9);
        List<double> shares = [];
        for (var trial = 0; trial < 200; trial++)
        {
            var fit = SpaceFit.Fit(Box, Tape(Box, 0.2, () => 0.2 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()))).Fit!;
            var up = fit.Offsets[2].Up;
            shares.Add(up.Value * Math.Max(1, fit.Scatter) / up.Standard);
        }

        Assert.InRange(Math.Sqrt(shares.Average(share => share * share)), 0.87, 1.13);
    }
}
