using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class ContourTests
{
    private static HeightField Lattice(Func<double, double, double> height, int count = 21) => HeightField.Of(
    [
        .. from row in Enumerable.Range(0, count)
           from column in Enumerable.Range(0, count)
           let x = 200.0 * column / (count - 1)
           let y = 100.0 * row / (count - 1)
           select new ProbePoint(x, y, height(x, y)),
    ])!;

    private static double Area(ContourLine line) =>
        Math.Abs(line.Spots.Zip(line.Spots.Skip(1), (one, other) => (one.X * other.Y) - (other.X * one.Y)).Sum()) / 2;

    [Fact]
    public void A_tilted_plane_has_straight_lines_from_rim_to_rim()
    {
        var line = Assert.Single(ContourLines.Of(Lattice((x, y) => (0.001 * x) + (0.002 * y)), 0.15));

        Assert.False(line.IsClosed);
        Assert.All(line.Spots, spot => Assert.Equal(0.15, (0.001 * spot.X) + (0.002 * spot.Y), 12));
        Assert.Contains(line.Spots, spot => Math.Abs(spot.X - 150) < 1e-9 && spot.Y == 0);
        Assert.Contains(line.Spots, spot => spot.X == 0 && Math.Abs(spot.Y - 75) < 1e-9);
    }

    // π r² of the circle in which a paraboloid is cut.
    [Fact]
    public void A_dome_has_a_ring_that_holds_the_area_it_should()
    {
        var ring = Assert.Single(ContourLines.Of(Lattice((x, y) => 0.1 - ((((x - 100) * (x - 100)) + ((y - 50) * (y - 50))) * 1e-4), 81), 0.1 - (0.04 * 2.25)));

        Assert.True(ring.IsClosed);
        Assert.Equal(ring.Spots[0], ring.Spots[^1]);
        Assert.InRange(Area(ring), 0.998 * Math.PI * 900, Math.PI * 900);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Lines_end_only_at_the_rim_and_every_crossed_edge_is_on_one_of_them(int seed)
    {
        var random = new Random(seed);
        var field = Lattice((_, _) => random.NextDouble(), 9);

        var lines = ContourLines.Of(field, 0.5);

        Assert.All(lines.Where(line => !line.IsClosed), line => Assert.True(IsRim(line.Spots[0]) && IsRim(line.Spots[^1])));
        var crossed = (from row in Enumerable.Range(0, 9) from column in Enumerable.Range(0, 8) select field.At(column, row) >= 0.5 != field.At(column + 1, row) >= 0.5).Count(each => each)
            + (from row in Enumerable.Range(0, 8) from column in Enumerable.Range(0, 9) select field.At(column, row) >= 0.5 != field.At(column, row + 1) >= 0.5).Count(each => each);
        Assert.Equal(crossed, lines.Sum(line => line.Spots.Count - (line.IsClosed ? 1 : 0)));
    }

    private static bool IsRim((double X, double Y) spot) => spot.X is 0 or 200 || spot.Y is 0 or 100;

    [Theory]
    [InlineData(0.9, 0.1, 0.45)]
    [InlineData(0.9, 0.1, 0.55)]
    public void At_a_saddle_the_corners_on_the_side_of_the_mean_hang_together(double high, double low, double level)
    {
        ProbePoint[] points = [new(0, 0, high), new(100, 0, low), new(100, 100, high), new(0, 100, low)];

        var lines = ContourLines.Of(HeightField.Of(points)!, level);

        Assert.Equal(2, lines.Count);
        // The mean is 0.5: above the lower level, so that the lines cut off the low corners, and below the higher one.
        var cutsOffLow = level < 0.5;
        Assert.All(lines, line => Assert.Equal(cutsOffLow, line.Spots.Average(spot => spot.X) > 50 == line.Spots.Average(spot => spot.Y) < 50));
    }

    [Fact]
    public void A_divided_cell_follows_the_bilinear_surface()
    {
        ProbePoint[] points = [new(0, 0, 0), new(100, 0, 0), new(100, 100, 1), new(0, 100, 0)];

        var line = Assert.Single(ContourLines.Of(HeightField.Of(points)!.Divided(50), 0.25));

        Assert.All(line.Spots, spot => Assert.Equal(0.25, spot.X * spot.Y / 10000, 4));
    }

    [Fact]
    public void Scattered_points_of_a_plane_give_the_plane_inside_and_nothing_outside()
    {
        var random = new Random(4);
        ProbePoint[] points =
        [
            .. new[] { (0.0, 0.0), (150.0, 20.0), (80.0, 180.0) }.Concat(Enumerable.Range(0, 30).Select(_ => (50 + (30 * random.NextDouble()), 20 + (60 * random.NextDouble()))))
                .Select(place => new ProbePoint(place.Item1, place.Item2, (0.01 * place.Item1) - (0.02 * place.Item2))),
        ];

        var field = HeightField.Of(points)!;

        Assert.True(field.IsInterpolated);
        var known = 0;
        for (var row = 0; row < field.Ys.Count; row++)
            for (var column = 0; column < field.Xs.Count; column++)
                if (!double.IsNaN(field.At(column, row)))
                {
                    known++;
                    Assert.Equal((0.01 * field.Xs[column]) - (0.02 * field.Ys[row]), field.At(column, row), 4);
                }

        // The triangle of the three outer points has 43 % of the rectangle around it.
        Assert.InRange(known / (double)(field.Xs.Count * field.Ys.Count), 0.40, 0.50);
        Assert.True(double.IsNaN(field.At(0, field.Ys.Count - 1)));
    }

    [Fact]
    public void Four_corners_and_a_middle_make_a_field_that_keeps_all_five()
    {
        ProbePoint[] points = [new(0, 0, 0.1), new(240, 0, 0.2), new(240, 240, 0.3), new(0, 240, 0.4), new(120, 120, 1)];

        var field = HeightField.Of(points)!;

        Assert.Equal([0.1, 0.2, 0.3, 0.4, 1], [field.At(0, 0), field.At(24, 0), field.At(24, 24), field.At(0, 24), field.At(12, 12)], (one, other) => Math.Abs(one - other) < 1e-4);
    }

    [Fact]
    public void A_place_probed_twice_counts_with_its_mean() =>
        Assert.Equal(0.2, HeightField.Of([new(0, 0, 0.1), new(0.2, 0, 0.3), new(100, 0, 0), new(0, 100, 0), new(100, 100, 0)])!.At(0, 0), 12);

    [Fact]
    public void Thinning_keeps_the_rim_and_the_plane()
    {
        var thin = Lattice((x, y) => x + (10 * y), 41).Thinned(7);

        Assert.Equal((7, 7, 0.0, 200.0, 100.0), (thin.Xs.Count, thin.Ys.Count, thin.Xs[0], thin.Xs[^1], thin.Ys[^1]));
        Assert.Equal(thin.Xs[2] + (10 * thin.Ys[3]), thin.At(2, 3), 9);
    }

    [Theory]
    [InlineData(-0.13, 0.21, 0.01, 0.05)]
    [InlineData(-0.13, 0.21, 0.08, 0.1)]
    [InlineData(0, 0.008, 0.0001, 0.001)]
    public void Levels_are_round_within_the_range_and_no_closer_than_asked(double low, double high, double closest, double step)
    {
        var levels = ContourLines.Levels(low, high, 8, closest);

        Assert.All(levels, level => Assert.True(level > low && level < high && Math.Abs((level / step) - Math.Round(level / step)) < 1e-9));
        Assert.True(levels.Count == 1 || Math.Abs(levels[1] - levels[0] - step) < 1e-12);
    }

    [Fact]
    public void A_height_that_nothing_reaches_has_no_line() => Assert.Empty(ContourLines.Of(Lattice((x, _) => x), 201));
}
