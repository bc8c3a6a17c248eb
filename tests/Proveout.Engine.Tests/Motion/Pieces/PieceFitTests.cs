using MathNet.Numerics.LinearAlgebra;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class PieceFitTests
{
    private static readonly PieceDistortion Bent = new(1.004, 0.997, 1.001, 0.003, -0.002, 0.0015);

    // The piece is drawn, its walls grown, its skin distorted, and each length taken between planes through its corners: no formula of the fit is used.
    [Fact]
    public void A_piece_made_with_known_scale_skew_and_growth_gives_them_back_from_its_geometry()
    {
        var piece = PieceSample.Piece();
        PieceReading[] readings = [.. piece.Parts.SelectMany(part => part.Measures.Select(measure => new PieceReading(measure, Taken(part, measure, 0.08))))];

        var fit = PieceFit.Of(piece, readings, PieceSample.Doubt()).Fit!;

        Assert.Equal(0.004, fit.Of(PieceQuantity.ScaleX).Value, 5);
        Assert.Equal(-0.003, fit.Of(PieceQuantity.ScaleY).Value, 5);
        Assert.Equal(0.001, fit.Of(PieceQuantity.ScaleZ).Value, 5);
        Assert.Equal(0.003, fit.Of(PieceQuantity.SkewXY).Value, 5);
        Assert.Equal(-0.002, fit.Of(PieceQuantity.SkewXZ).Value, 5);
        Assert.Equal(0.0015, fit.Of(PieceQuantity.SkewYZ).Value, 5);
        // The skin is distorted with its growth: 0.16 mm times 1.004 and less.
        Assert.Equal(0.16, fit.Of(PieceQuantity.Walls).Value, 2);
        Assert.Null(fit.Odd);
    }

    [Fact]
    public void The_distance_of_two_sides_is_that_of_the_planes_through_their_moved_points()
    {
        var random = new Random(5);
        for (var trial = 0; trial < 50; trial++)
        {
            SpaceVector drawn = new(PieceSample.Normal(random, 1), PieceSample.Normal(random, 1), PieceSample.Normal(random, 1));
            SpaceVector facing = new(drawn.X / drawn.Length, drawn.Y / drawn.Length, drawn.Z / drawn.Length);
            PieceDistortion distortion = new(1.1, 0.9, 1.05, 0.1, -0.05, 0.07);

            Assert.Equal(Planes(distortion.Placed, facing, new(3, 4, 5), 17), distortion.Between(facing, 17), 9);
        }
    }

    // MathNet.Numerics solves the same weighted equations by its own QR.
    [Fact]
    public void Scale_and_growth_agree_with_an_independent_solver_down_to_their_covariance()
    {
        var piece = PieceSample.Piece();
        var random = new Random(11);
        var along = PieceSample.Readings(piece, new(ScaleX: 1.002), 0.1, _ => PieceSample.Normal(random, 0.03), measure => measure.Facing is { X: > 0.99 });
        var fit = PieceFit.Of(piece, along, PieceSample.Doubt()).Fit!;

        // Unknowns: scale, growth, zero, inside jaws, scale of the calliper.
        double[] held = [0.02 / Math.Sqrt(3), 0.02 / Math.Sqrt(3), 0.02 / 150 / Math.Sqrt(3)];
        var scale = fit.Of(PieceQuantity.ScaleX).Value;
        var design = Matrix<double>.Build.DenseOfRows(along
            .Select(reading => new[] { reading.Measure.NominalMm, reading.Measure.GrowthSign, 1.0, reading.Measure.Grip == PieceGrip.Inside ? 1 : 0, reading.Measure.NominalMm * (1 + scale) }
                .Select(entry => entry / fit.SpreadMm).ToArray())
            .Concat(held.Select((standard, index) => Enumerable.Range(0, 5).Select(column => column == index + 2 ? 1 / standard : 0.0).ToArray())));
        var right = Vector<double>.Build.DenseOfEnumerable(along.Select(reading => (reading.Millimetres - reading.Measure.NominalMm) / fit.SpreadMm).Concat([0.0, 0, 0]));
        var solved = design.QR().Solve(right);
        var covariance = design.TransposeThisAndMultiply(design).Inverse();

        Assert.Equal(solved[0], scale, 8);
        Assert.Equal(solved[1], fit.Of(PieceQuantity.Walls).Value, 6);
        Assert.Equal(Math.Sqrt(covariance[0, 0]), fit.Of(PieceQuantity.ScaleX).Standard, 8);
        Assert.Equal(Math.Sqrt(covariance[1, 1]), fit.Of(PieceQuantity.Walls).Standard, 6);
        Assert.Equal(covariance[0, 1], fit.Covariance(PieceQuantity.ScaleX, PieceQuantity.Walls), 9);
    }

    [Fact]
    public void What_the_piece_should_read_after_correction_is_what_a_corrected_piece_reads()
    {
        var piece = PieceSample.Piece();
        var fit = PieceFit.Of(piece, PieceSample.Readings(piece, Bent, 0.2), PieceSample.Doubt()).Fit!;
        Dictionary<PieceQuantity, double> corrected = new() { [PieceQuantity.ScaleX] = 0, [PieceQuantity.ScaleY] = -0.005, [PieceQuantity.SkewXY] = 0 };
        var after = PieceSample.Readings(piece, Bent with { ScaleX = 1, ScaleY = 0.995, SkewXY = 0 }, 0.2);

        foreach (var reading in after)
        {
            var predicted = fit.After(reading.Measure, corrected);
            Assert.Equal(reading.Millimetres, predicted.Value, 3);
            Assert.True(predicted.Expanded > 0.005);
        }
    }

    [Fact]
    public void What_the_axes_share_cancels_in_their_difference()
    {
        var piece = PieceSample.Piece();
        // A calliper that may be off by 0.3 mm in 150 mm.
        var coarse = PieceSample.Plain with { Scale = Uncertain.Within(0, 0.002) };
        var random = new Random(2);
        var fit = PieceFit.Of(piece, PieceSample.Readings(piece, new(), 0, _ => PieceSample.Normal(random, 0.02)), PieceSample.Doubt(coarse)).Fit!;

        Assert.True(fit.Of(PieceQuantity.ScaleX).Standard > 0.001);
        Assert.True(fit.Difference(PieceQuantity.ScaleX, PieceQuantity.ScaleY).Standard < 0.0004);
    }

    [Fact]
    public void A_misread_length_is_named()
    {
        var piece = PieceSample.Piece();
        var random = new Random(4);
        var fit = PieceFit.Of(piece, PieceSample.Readings(piece, new(1.001, 1.002), 0.1, measure => PieceSample.Normal(random, 0.02) + (measure.Number == 10 ? 0.5 : 0)), PieceSample.Doubt()).Fit!;

        Assert.Equal(10, fit.Odd);
    }

    [Theory]
    [InlineData(1, 2)]
    [InlineData(7, 8)]
    public void Readings_that_stand_in_each_others_place_are_named(int one, int other)
    {
        var piece = PieceSample.Piece();
        var random = new Random(9);
        PieceReading[] sound = PieceSample.Readings(piece, new(1.006, 0.999, SkewXY: 0.008), 0.1, _ => PieceSample.Normal(random, 0.015), PieceSample.IsRing);
        PieceReading[] mixed = [.. sound.Select(reading => reading with { Millimetres = sound[(reading.Measure.Number == one ? other : reading.Measure.Number == other ? one : reading.Measure.Number) - 1].Millimetres })];

        Assert.Equal((one, other), Exchange(mixed));
        Assert.Null(Exchange(sound));

        (int, int)? Exchange(PieceReading[] readings) => PieceExchange.Of(piece, readings, PieceSample.Doubt(), PieceFit.Of(piece, readings, PieceSample.Doubt()).Fit!);
    }

    [Fact]
    public void Sound_readings_are_never_called_exchanged()
    {
        var piece = PieceSample.Piece();
        var random = new Random(10);
        for (var trial = 0; trial < 40; trial++)
        {
            var readings = PieceSample.Readings(piece, new(1.002, 0.999, SkewXY: 0.002), 0.1, _ => PieceSample.Normal(random, 0.03), measure => measure.Number <= 8);
            Assert.Null(PieceExchange.Of(piece, readings, PieceSample.Doubt(), PieceFit.Of(piece, readings, PieceSample.Doubt()).Fit!));
        }
    }

    [Fact]
    public void Outside_lengths_of_one_size_are_not_enough_and_the_ones_to_add_are_named()
    {
        var piece = PieceSample.Piece();

        var problem = PieceFit.Of(piece, PieceSample.Readings(piece, new(), 0, taken: measure => measure.Number <= 2), PieceSample.Doubt()).Problem!;

        Assert.Contains("Read 5 (inside the outer ring, along X) too", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Few_readings_lean_on_the_stated_repeatability()
    {
        var piece = PieceSample.Piece();
        var fit = PieceFit.Of(piece, PieceSample.Readings(piece, new(), 0, taken: measure => measure.Number is 1 or 5 or 9), PieceSample.Doubt(repeat: 0.05)).Fit!;

        Assert.True(fit.IsStated);
        Assert.Equal(0.05, fit.SpreadMm, 9);
    }

    [Theory]
    [InlineData(1, 3.937, "a length in inches")]
    [InlineData(1, 0, "above 0")]
    [InlineData(1, 9.99, "no digit is missing")]
    [InlineData(16, 100.1, "would fit measure 1")]
    [InlineData(5, 50.1, "It would fit measure 9")]
    public void A_length_that_cannot_be_is_refused_with_what_it_may_be(int number, double millimetres, string words)
    {
        var piece = PieceSample.Piece();
        PieceReading[] readings = [.. PieceSample.Readings(piece, new(), 0).Select(reading => reading.Measure.Number == number ? reading with { Millimetres = millimetres } : reading)];

        Assert.Contains(words, PieceFit.Of(piece, readings, PieceSample.Doubt()).Problem!, StringComparison.Ordinal);
    }

    [Fact]
    public void An_axis_with_a_wrong_pulley_is_no_bad_input()
    {
        var piece = PieceSample.Piece();
        var fit = PieceFit.Of(piece, PieceSample.Readings(piece, new(ScaleX: 1.25), 0.1), PieceSample.Doubt()).Fit!;

        Assert.Equal(0.25, fit.Of(PieceQuantity.ScaleX).Value, 6);
        Assert.StartsWith("20 to 16", ScaleCause.Of(1.25, 0.002)!.Words, StringComparison.Ordinal);
        Assert.Null(ScaleCause.Of(1.003, 0.002));
        Assert.NotNull(ScaleCause.Of(1.0155, 0.001));
    }

    private static double Taken(PiecePart part, PieceMeasure measure, double wallGrowth)
    {
        // Only walls of the rings grow here; slants and heights stay as drawn.
        var growth = measure.Growth == PieceGrowth.Walls ? wallGrowth : 0;
        var shape = part.Shape.Grown(growth);
        var ways = part.Name switch
        {
            "double ring" => (Func<double, double, double, SpaceVector>)((across, up, along) => new(across, up, along)),
            "upright along Y" => (across, up, along) => new(along, across, up),
            _ => (across, up, along) => new(across, -along, up),
        };
        var mesh = Extrusion.Of(shape, [(0, 0), (10, 0)], ways);
        var middle = ways((measure.From.Across + measure.To.Across) / 2, (measure.From.Up + measure.To.Up) / 2, 0);
        var half = (measure.NominalMm / 2) + (measure.GrowthSign * growth);
        var sides = new[] { half, -half }.Select(side => mesh.Corners.Where(corner => Math.Abs(corner.Less(middle).Dot(measure.Facing) - side) < 1e-9).Select(Bent.Placed).ToArray()).ToArray();
        var normal = Normal(sides[0]);
        return Math.Abs(sides[0][0].Less(sides[1][0]).Dot(normal)) / normal.Length;
    }

    private static double Planes(Func<SpaceVector, SpaceVector> placed, SpaceVector facing, SpaceVector at, double distance)
    {
        var one = facing.Cross(Math.Abs(facing.X) < 0.5 ? new(1, 0, 0) : new(0, 1, 0));
        var other = facing.Cross(one);
        SpaceVector[] side = [placed(at), placed(Sum(at, one, 1)), placed(Sum(at, other, 1))];
        var normal = Normal(side);
        return Math.Abs(placed(Sum(at, facing, distance)).Less(side[0]).Dot(normal)) / normal.Length;
    }

    private static SpaceVector Sum(SpaceVector at, SpaceVector way, double share) => new(at.X + (share * way.X), at.Y + (share * way.Y), at.Z + (share * way.Z));

    // Of the largest triangle that the points make with the first.
    private static SpaceVector Normal(SpaceVector[] points) =>
        (from one in points from other in points select one.Less(points[0]).Cross(other.Less(points[0]))).MaxBy(normal => normal.Length);
}
