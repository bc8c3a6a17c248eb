using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class PieceShapeTests
{
    [Theory]
    [InlineData(PieceMaking.Printed, 50)]
    [InlineData(PieceMaking.Printed, 100)]
    [InlineData(PieceMaking.Milled, 120)]
    [InlineData(PieceMaking.Dispensed, 60)]
    public void Every_part_is_a_closed_skin_around_the_volume_of_its_shape(PieceMaking making, double ring)
    {
        var piece = PieceSample.Piece(making, ring);

        foreach (var part in piece.Parts)
        {
            Assert.Equal(0, part.Mesh.OpenSides);
            // A shape with h holes drawn through is a ball with h ways through (Euler and Poincaré).
            Assert.Equal(2 - (2 * part.Shape.Holes.Count), part.Mesh.EulerNumber);
            Assert.True(part.Mesh.CubicMillimetres > 0);
            Assert.All(part.Mesh.Corners, corner => Assert.True(Math.Min(corner.X, Math.Min(corner.Y, corner.Z)) > -1e-9, $"{part.Name} {corner}"));
        }
    }

    [Fact]
    public void A_plain_extrusion_has_the_area_of_its_shape_times_its_height()
    {
        var upright = PieceSample.Piece().Parts.Single(part => part.Name == "upright along Y");
        // Area of a regular eight-sided figure by the distance of its sides: 2 (√2 - 1) d²; a bore of 24 sides: ½·24·r²·sin(15°).
        var area = 2 * (Math.Sqrt(2) - 1) * ((40 * 40) - (24 * 24));
        var bores = 2 * 12 * 1.6 * 1.6 * Math.Sin(Math.PI / 12);

        Assert.Equal((area - bores) * 12, upright.Mesh.CubicMillimetres, 6);
    }

    [Fact]
    public void An_open_or_inverted_skin_is_noticed()
    {
        var mesh = PieceSample.Piece().Parts[0].Mesh;

        Assert.NotEqual(0, (mesh with { Triangles = [.. mesh.Triangles.Skip(1)] }).OpenSides);
        Assert.NotEqual(0, (mesh with { Triangles = [(mesh.Triangles[0].First, mesh.Triangles[0].Third, mesh.Triangles[0].Second), .. mesh.Triangles.Skip(1)] }).OpenSides);
        Assert.True((mesh with { Triangles = [.. mesh.Triangles.Select(triangle => (triangle.First, triangle.Third, triangle.Second))] }).CubicMillimetres < 0);
    }

    [Fact]
    public void Triangles_of_a_shape_with_holes_cover_it_once()
    {
        var shape = DoubleRing.ShapeOf(100);
        (double Across, double Up)[] points = [.. shape.Lines.SelectMany(line => line.Points)];

        var areas = EarClipping.Cut(shape).Select(triangle => new Outline([points[triangle.First], points[triangle.Second], points[triangle.Third]]).SignedArea).ToArray();

        // All turn alike and add up to the area: none overlaps another and none lies outside.
        Assert.All(areas, area => Assert.True(area > 0));
        Assert.Equal(shape.Area, areas.Sum(), 6);
        Assert.Equal(points.Length + (2 * shape.Holes.Count) - 2, areas.Length);
    }

    [Fact]
    public void Parts_stand_free_of_each_other_and_within_the_room_that_is_stated() => Prop.ForAll(
        Gen.Choose(5, 20).Select(tens => tens * 10.0).ToArbitrary(), ArbMap.Default.ArbFor<PieceMaking>(), (ring, making) =>
        {
            var piece = PieceSample.Piece(making, ring);
            var boxes = piece.Parts.Select(part => (
                X: (part.Mesh.Corners.Min(corner => corner.X), part.Mesh.Corners.Max(corner => corner.X)),
                Y: (part.Mesh.Corners.Min(corner => corner.Y), part.Mesh.Corners.Max(corner => corner.Y)),
                Z: part.Mesh.Corners.Max(corner => corner.Z))).ToArray();
            var room = piece.Size.Room;
            return boxes.All(box => box.X.Item2 <= room.X + 1e-9 && box.Y.Item2 <= room.Y + 1e-9 && box.Z <= room.Z + 1e-9)
                && boxes.Index().All(one => boxes.Skip(one.Index + 1).All(other =>
                    Apart(one.Item.X, other.X) || Apart(one.Item.Y, other.Y)));
        }).QuickCheckThrowOnFailure();

    [Theory]
    [InlineData(220, 220, 150, 130)]
    [InlineData(120, 120, 150, 60)]
    [InlineData(900, 900, 150, 140)]
    [InlineData(900, 900, 80, 70)]
    public void The_largest_piece_that_machine_and_calliper_allow_is_chosen(double x, double y, double reach, double ring)
    {
        var (size, problem) = TestPieceSize.Largest(PieceMaking.Printed, new(x, y, 200), reach, 5, 0.45, 0.2);

        Assert.Null(problem);
        Assert.Equal(ring, size!.RingMm);
        Assert.True(size.Room.X <= x - 10 && size.Room.Y <= y - 10);
        // Heights are whole layers.
        Assert.Equal(Math.Round(size.UprightMm / 5 / 0.2), size.UprightMm / 5 / 0.2, 9);
    }

    [Fact]
    public void A_machine_that_is_too_small_is_told_what_the_smallest_piece_needs() =>
        Assert.StartsWith("The smallest piece needs 60 mm of travel along X", TestPieceSize.Largest(PieceMaking.Printed, new(70, 70, 100), 150, 5, 0.45, 0.2).Problem, StringComparison.Ordinal);

    [Fact]
    public void Grown_material_is_wider_outside_and_narrower_inside()
    {
        var grown = DoubleRing.ShapeOf(100).Grown(0.1);

        Assert.Equal(100.2, grown.Outer.Points.Max(point => point.Across) - grown.Outer.Points.Min(point => point.Across), 9);
        var window = grown.Holes.Single(hole => hole.Points.Count == 8);
        Assert.Equal(29.8, window.Points.Max(point => point.Across) - window.Points.Min(point => point.Across), 9);
    }

    private static bool Apart((double Low, double High) one, (double Low, double High) other) => one.High <= other.Low - 1 || other.High <= one.Low - 1;
}
