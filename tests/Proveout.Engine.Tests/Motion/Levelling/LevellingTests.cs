using MathNet.Numerics.LinearRegression;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class LevellingTests
{
    private static readonly Support[] Three = [new("front left", 0, 0), new("front right", 300, 0), new("back", 150, 300)];

    private static ProbePoint[] Grid(Func<double, double, double> height, int count = 5) =>
    [
        .. from row in Enumerable.Range(0, count)
           from column in Enumerable.Range(0, count)
           let x = 300.0 * column / (count - 1)
           let y = 300.0 * row / (count - 1)
           select new ProbePoint(x, y, height(x, y)),
    ];

    private static PlateMap Map(Func<double, double, double> height) => PlateMap.Of(Grid(height)).Map!;

    // reference: flatness example, 3 × 3 grid of 150 mm.
    [Fact]
    public void The_plane_and_flatness_of_the_worked_example_come_out()
    {
        double[] heights = [0, 0.03, 0.02, 0.05, 0.09, 0.04, 0.02, 0.06, 0.03];

        var map = PlateMap.Of([.. heights.Select((height, index) => new ProbePoint(75 * (index % 3), 75 * (index / 3), height))]).Map!;

        Assert.Equal(2.22222e-5 * 2, map.Plane.SlopeX, 8);
        Assert.Equal(0.0766667, map.Flatness, 6);
        Assert.Equal(0.0285450, map.ResidualDeviation!.Value, 6);
        Assert.True(map.LeastFlatness <= map.Flatness);
    }

    [Fact]
    public void The_plane_agrees_with_an_independent_library()
    {
        var random = new Random(2);
        ProbePoint[] points = [.. Enumerable.Range(0, 40).Select(_ => new ProbePoint(300 * random.NextDouble(), 200 * random.NextDouble(), random.NextDouble()))];

        var plane = PlateMap.Of(points).Map!.Plane;

        var oracle = MultipleRegression.QR([.. points.Select(point => new[] { point.XMillimetres, point.YMillimetres })], [.. points.Select(point => point.HeightMillimetres)], intercept: true);
        Assert.Equal(oracle[0], plane.HeightMillimetres, 10);
        Assert.Equal(oracle[1], plane.SlopeX, 12);
        Assert.Equal(oracle[2], plane.SlopeY, 12);
    }

    [Fact]
    public void Twist_and_crown_are_told_apart()
    {
        var map = Map((x, y) => (0.001 * x) + (0.4 * x * y / 90000) - (0.2 * (((x - 150) * (x - 150)) + ((y - 150) * (y - 150))) / 45000));

        Assert.Equal(0.4, map.Twist!.Value.Value, 9);
        Assert.Equal(0.2, map.Crown!.Value.Value, 9);
    }

    [Fact]
    public void A_plate_tilted_along_y_is_level_after_the_moves()
    {
        var advice = Levelling.Of(Map((_, y) => 0.001 * y), Three, 0.005, "back").Advice!;

        Assert.Equal(0.3, advice.LeastSquares[0].Raise.Value, 9);
        Assert.Equal(0.3, advice.LeastSquares[1].Raise.Value, 9);
        Assert.True(advice.LeastSquares[2].IsLeft);
        Assert.Equal(0, advice.LeftByLeastSquares, 9);
        Assert.Equal(0.3, advice.Minimax[0].Raise.Value, 7);
    }

    [Fact]
    public void Any_plane_is_levelled_by_supports_at_any_place()
    {
        var random = new Random(8);
        for (var trial = 0; trial < 30; trial++)
        {
            var (a, b) = (random.NextDouble() - 0.5, random.NextDouble() - 0.5);
            Support[] supports = [.. Enumerable.Range(0, 3 + (trial % 4)).Select(index => new Support($"{index}", 600 * random.NextDouble(), 600 * random.NextDouble()))];
            if (Levelling.Of(Map((x, y) => (a * x) + (b * y)), supports, 0.01).Advice is not { } advice)
                continue;
            double[] after = [.. advice.LeastSquares.Select(move => (a * move.Support.XMillimetres) + (b * move.Support.YMillimetres) + move.Raise.Value)];
            Assert.True(after.Max() - after.Min() < 1e-6);
        }
    }

    [Fact]
    public void Four_screws_take_a_twist_out_only_when_the_plate_may_bend()
    {
        var map = Map((x, y) => 0.4 * x * y / 90000);
        Support[] corners = [new("1", 0, 0), new("2", 300, 0), new("3", 300, 300), new("4", 0, 300)];

        Assert.Equal(0, Levelling.Of(map, corners, 0.005, mayBend: true).Advice!.LeftByLeastSquares, 9);
        Assert.True(Levelling.Of(map, corners, 0.005).Advice!.LeftByLeastSquares > 0.19);
    }

    [Fact]
    public void The_minimax_moves_never_leave_more_than_those_of_least_squares()
    {
        var random = new Random(4);
        for (var trial = 0; trial < 20; trial++)
        {
            var advice = Levelling.Of(Map((_, _) => random.NextDouble()), Three, 0.01).Advice!;
            Assert.True(advice.LeftByMinimax <= advice.LeftByLeastSquares + 1e-6);
        }
    }

    [Fact]
    public void Points_on_one_line_are_said_with_where_to_probe()
    {
        ProbePoint[] line = [.. Enumerable.Range(0, 6).Select(index => new ProbePoint(50 * index, 50 * index, 0.1))];

        Assert.StartsWith("All points lie on one line", PlateMap.Of(line).Problem!, StringComparison.Ordinal);
        Assert.Contains("Probe at least one point 177 mm beside the line", PlateMap.Of(line).Problem!, StringComparison.Ordinal);
        Assert.StartsWith("Only two points", PlateMap.Of(line[..2]).Problem!, StringComparison.Ordinal);
        Assert.StartsWith("All points lie at the same place", PlateMap.Of([line[0], line[0], line[0]]).Problem!, StringComparison.Ordinal);
        Assert.StartsWith("The supports lie on one line", Levelling.Of(Map((_, _) => 0), [new("1", 0, 0), new("2", 100, 0), new("3", 200, 0)], 0.01).Problem!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_heat_soak_shows_as_the_change_of_the_map()
    {
        var cold = Map((x, _) => 0.001 * x);
        var hot = Map((x, y) => (0.001 * x) - (0.15 * (((x - 150) * (x - 150)) + ((y - 150) * (y - 150))) / 45000));

        var change = cold.ChangeTo(hot).Map!;

        Assert.Equal(0, change.Plane.SlopeX, 9);
        Assert.Equal(0.15, change.Crown!.Value.Value, 9);
    }

    [Theory]
    [InlineData(0.25, "about a quarter turn clockwise (90°)")]
    [InlineData(-0.38, "about 3 eighths of a turn anticlockwise (137°)")]
    [InlineData(0.02, "7° clockwise")]
    [InlineData(2.5, "2.5 turns clockwise")]
    public void Turns_are_said_as_a_hand_makes_them(double turns, string words) => Assert.Equal(words, ScrewTurn.Words(turns));

    [Fact]
    public void A_screw_that_lowers_the_plate_clockwise_is_turned_the_other_way()
    {
        Assert.Equal(0.4, ScrewTurn.Turns(0.2, 0.5, clockwiseRaises: true), 12);
        Assert.Equal(-0.4, ScrewTurn.Turns(0.2, 0.5, clockwiseRaises: false), 12);
    }

    [Fact]
    public void A_reading_that_does_not_belong_is_named_and_a_steady_series_has_none()
    {
        Assert.Equal(4, ProbeSeries.Of([0.001, 0.002, 0.001, 0.002, 0.030, 0.001, 0.002, 0.001])!.Outlier);
        Assert.Null(ProbeSeries.Of([0.001, 0.002, 0.001, 0.002, 0.001, 0.002])!.Outlier);
    }

    [Fact]
    public void Drift_is_claimed_only_when_scatter_does_not_explain_it()
    {
        Assert.True(ProbeSeries.Of([0, 0.011, 0.019, 0.031, 0.040, 0.049])!.IsDrifting);
        Assert.False(ProbeSeries.Of([0, 0.011, -0.009, 0.010, -0.010, 0.002])!.IsDrifting);
    }

    // t(9 degrees, 95 %) = 2.262: ten readings of 4.7 µm spread, to be known within 2 µm, need (2.262 · 4.7 / 2)² = 28.3.
    [Fact]
    public void The_number_of_samples_follows_from_the_spread()
    {
        double[] readings = [.. Enumerable.Range(0, 10).Select(index => 0.0047 * Math.Sqrt(0.9) * (index % 2 == 0 ? 1 : -1))];

        var series = ProbeSeries.Of(readings)!;

        Assert.Equal(0.0047, series.DeviationMillimetres, 9);
        Assert.Equal(29, series.SamplesFor(0.002));
    }

    // By hand: groups (1, 3) and (5, 7): within 2, between 16, so s_r² = 2 and s_L² = (16 − 2)/2 = 7.
    [Fact]
    public void Reproducibility_adds_what_differs_between_groups()
    {
        var groups = ProbeGroups.Of([[1, 3], [5, 7]])!;

        Assert.Equal(Math.Sqrt(2), groups.RepeatabilityMillimetres, 12);
        Assert.Equal(3, groups.ReproducibilityMillimetres, 12);
        Assert.Null(ProbeGroups.Of([[1, 3]]));
    }

    private static readonly Support[] Two = [new("left", 0, 150), new("right", 300, 150)];

    [Fact]
    public void Two_lifts_take_the_roll_away_and_say_what_pitch_stays()
    {
        var advice = Levelling.Of(Map((x, y) => (0.001 * x) + (0.002 * y)), Two, 0.005, leave: "left").Advice!;

        Assert.Equal(-0.3, advice.LeastSquares[1].Raise.Value, 9);
        Assert.Equal(0.6, advice.TiltAcross!.Value.Value, 9);
        Assert.Equal(0.6, advice.LeftByLeastSquares, 9);
        Assert.Equal(0.6, advice.LeftByMinimax, 9);
    }

    [Fact]
    public void Two_lifts_aslant_level_along_their_own_line()
    {
        // Tilt of 0.002 along the diagonal from front left to back right, nothing across.
        var slope = 0.002 / Math.Sqrt(2);
        var advice = Levelling.Of(Map((x, y) => slope * (x + y)), [new("near", 0, 0), new("far", 300, 300)], 0.005, leave: "near").Advice!;

        Assert.Equal(-0.002 * 300 * Math.Sqrt(2), advice.LeastSquares[1].Raise.Value, 9);
        Assert.Equal(0, advice.TiltAcross!.Value.Value, 9);
        Assert.Equal(0, advice.LeftByLeastSquares, 9);
    }

    [Fact]
    public void What_stays_across_two_lifts_has_the_uncertainty_of_the_slope()
    {
        // 25 points, u from −1 to 1 in five steps: Σ v² = 12.5, so that the slope over 300 mm is known to 2 s / √12.5.
        var advice = Levelling.Of(Map((x, _) => 0.001 * x), Two, 0.005).Advice!;

        Assert.Equal(2 * 0.005 / Math.Sqrt(12.5), advice.TiltAcross!.Value.Standard, 9);
    }

    [Fact]
    public void One_support_or_two_at_one_place_are_refused()
    {
        Assert.Contains("One support cannot level", Levelling.Of(Map((x, _) => x), [Two[0]], 0.005).Problem!, StringComparison.Ordinal);
        Assert.Contains("at the same place", Levelling.Of(Map((x, _) => x), [Two[0], Two[0] with { Name = "other" }], 0.005).Problem!, StringComparison.Ordinal);
    }
}
