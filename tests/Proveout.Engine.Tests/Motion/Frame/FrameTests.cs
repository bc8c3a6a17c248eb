using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class FrameTests
{
    private static readonly FramePoint[] Square = [new("A", 0, 0), new("B", 300, 0), new("C", 300, 300), new("D", 0, 300)];
    private static readonly string[] Names = ["A", "B", "C", "D"];

    private static MeasuredDistance Distance(string from, string to, double millimetres, double standard = 0.1) => new(from, to, new(millimetres, standard));

    private static MeasuredDistance[] Readings(double first, double second, double standard = 0.1) =>
    [
        Distance("A", "B", 300, standard), Distance("B", "C", 300, standard), Distance("C", "D", 300, standard), Distance("D", "A", 300, standard),
        Distance("A", "C", first, standard), Distance("B", "D", second, standard),
    ];

    // A rhombus of side 300 mm skewed by 0.1° has these diagonals (law of cosines).
    [Fact]
    public void A_skew_of_a_tenth_of_a_degree_is_found_from_its_diagonals()
    {
        var fit = FrameFit.Fit(Square, Readings(424.634147, 423.893667), []).Fit!;
        var frame = FrameSquareness.Of(fit, Names);

        Assert.Equal(-0.1 * Math.PI / 180, frame.Corners[0].BeyondRight.Value, 6);
        Assert.Equal(0.1 * Math.PI / 180, frame.Corners[1].BeyondRight.Value, 6);
        Assert.Equal(-0.5236, frame.PushMillimetres.Value, 3);
        Assert.Equal(424.2641, frame.FirstDiagonalAfter.Value, 3);
        Assert.Equal(424.2641, frame.SecondDiagonalAfter.Value, 3);
        Assert.Null(fit.Contradiction);
        Assert.True(fit.IsChecked);
        Assert.Equal(1, fit.Redundancy);
    }

    [Fact]
    public void After_the_push_the_frame_reads_what_was_predicted()
    {
        var frame = FrameSquareness.Of(FrameFit.Fit(Square, Readings(425.1, 423.4), []).Fit!, Names);

        var after = FrameSquareness.Of(FrameFit.Fit(Square, Readings(frame.FirstDiagonalAfter.Value, frame.SecondDiagonalAfter.Value), []).Fit!, Names);

        Assert.True(Math.Abs(after.PushMillimetres.Value) < 0.01, $"{after.PushMillimetres}");
    }

    // Sides 300, 400 and diagonal 501: 90.23897° by the law of cosines.
    [Fact]
    public void Three_distances_give_the_angle_between_two_sides()
    {
        FramePoint[] corner = [new("A", 0, 0), new("B", 300, 0), new("D", 0, 400)];

        var fit = FrameFit.Fit(corner, [Distance("A", "B", 300), Distance("A", "D", 400), Distance("B", "D", 501)], []).Fit!;
        var angle = fit.Of(places => Math.Atan2(places[2].Y, places[2].X));

        Assert.Equal(90.23897, angle.Value * 180 / Math.PI, 4);
        // d(angle) = d·dd / (a b sin) and its fellows for a and b.
        Assert.Equal(0.1 * Math.Sqrt(Math.Pow(501.0 / 120000, 2) + Math.Pow((300 - (400 * Math.Cos(angle.Value))) / 120000, 2) + Math.Pow((400 - (300 * Math.Cos(angle.Value))) / 120000, 2)), angle.Standard, 6);
        Assert.Equal(0, fit.Redundancy);
        Assert.False(fit.IsChecked);
    }

    [Fact]
    public void Unequal_opposite_sides_leave_something_that_no_push_removes()
    {
        MeasuredDistance[] readings = [Distance("A", "B", 300), Distance("B", "C", 300), Distance("C", "D", 302), Distance("D", "A", 300), Distance("A", "C", 424.3), Distance("B", "D", 425.7)];

        var frame = FrameSquareness.Of(FrameFit.Fit(Square, readings, []).Fit!, Names);

        Assert.InRange(frame.LeftOver.Value, 1 / 300.0 * 0.8, 2 / 300.0);
    }

    [Fact]
    public void A_square_reading_counts_beside_the_tape()
    {
        var tape = FrameSquareness.Of(FrameFit.Fit(Square, Readings(424.63, 423.89), []).Fit!, Names).Corners[0].BeyondRight;
        MeasuredCorner square = new("A", "B", "D", new(-0.35, 0.02), 200);

        var both = FrameSquareness.Of(FrameFit.Fit(Square, Readings(424.63, 423.89), [square]).Fit!, Names).Corners[0].BeyondRight;

        Assert.True(both.Standard < tape.Standard);
        Assert.InRange(both.Value, -0.0019, -0.0017);
    }

    [Fact]
    public void A_reading_that_contradicts_the_others_is_named_when_enough_check_it()
    {
        MeasuredCorner[] squares = [new("A", "B", "D", new(0, 0.05), 200), new("B", "C", "A", new(0, 0.05), 200), new("C", "D", "B", new(0, 0.05), 200)];

        var fit = FrameFit.Fit(Square, Readings(424.26, 434.26), squares).Fit!;

        Assert.Equal("B-D", fit.Contradiction);
    }

    [Fact]
    public void A_diagonal_that_no_triangle_closes_on_is_said()
    {
        var problem = FrameFit.Fit(Square, Readings(624, 424), []).Problem!;

        Assert.StartsWith("A-C cannot be 624 mm: A-B and B-C together are 24 mm shorter. Measure the three again", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_without_a_diagonal_are_not_enough_and_one_to_measure_is_named()
    {
        var problem = FrameFit.Fit(Square, Readings(1, 1)[..4], []).Problem!;

        Assert.Contains("Measure A-C too", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_point_and_a_length_of_nothing_are_said()
    {
        Assert.Contains("no point `E`", FrameFit.Fit(Square, [Distance("A", "E", 300)], []).Problem!, StringComparison.Ordinal);
        Assert.Contains("A-B needs", FrameFit.Fit(Square, [Distance("A", "B", 0)], []).Problem!, StringComparison.Ordinal);
    }

    [Fact]
    public void Fitted_places_of_a_frame_measured_without_error_are_the_true_ones()
    {
        var random = new Random(3);
        for (var trial = 0; trial < 20; trial++)
        {
            (double X, double Y)[] truth = [(0, 0), (300 + random.NextDouble(), 0), (300 + (4 * random.NextDouble()), 300 + random.NextDouble()), (4 * random.NextDouble(), 300)];
            MeasuredDistance[] readings =
            [
                .. from one in Enumerable.Range(0, 4)
                   from other in Enumerable.Range(one + 1, 3 - one)
                   select Distance(Names[one], Names[other], Math.Sqrt(Math.Pow(truth[one].X - truth[other].X, 2) + Math.Pow(truth[one].Y - truth[other].Y, 2))),
            ];

            var fit = FrameFit.Fit(Square, readings, []).Fit!;

            foreach (var (index, name) in Names.Index())
                Assert.True(Math.Abs(fit.PlaceOf(name).X - truth[index].X) + Math.Abs(fit.PlaceOf(name).Y - truth[index].Y) < 1e-6);
        }
    }

    [Fact]
    public void Twist_is_what_one_foot_stands_off_the_other_three()
    {
        var twist = FrameTwist.Of(new(0.5, 0.02), new(0, 0.02), new(0, 0.02), new(0, 0.02));

        Assert.Equal(new Uncertain(0.5, 0.04), twist.StandsOff);
    }

    [Fact]
    public void A_gantry_that_touches_one_stop_only_is_racked_by_the_other_gap()
    {
        var racking = GantryRacking.Of(new(0, 0.02), new(0.4, 0.02), 400);

        Assert.Equal(1e-3, racking.Angle.Value, 12);
        Assert.True(racking.Angle.Value > GantryRacking.LargestShare);
    }

    // reference: straightness example, seven places 50 mm apart.
    [Fact]
    public void Straightness_of_a_rail_is_the_width_about_each_reference_line()
    {
        var rail = RailLine.Of([0, 50, 100, 150, 200, 250, 300], [0, 0.02, 0.05, 0.04, 0.03, 0.01, 0.02], 0.002)!;

        Assert.Equal(1.428571e-5, rail.Slope.Value, 10);
        Assert.Equal(0.0485714, rail.AboutLeastSquares, 6);
        Assert.Equal(0.0500, rail.AboutEnds, 6);
        Assert.Equal(0.0460, rail.LeastZone, 6);
        Assert.Null(RailLine.Of([0, 0, 0], [1, 2, 3], 0.1));
    }
}
