using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;

namespace Proveout.Workshop.Tests;

public sealed class PieceFilesTests
{
    [Theory]
    [InlineData("printed", 6)]
    [InlineData("milled", 2)]
    [InlineData("dispensed", 2)]
    public void Every_way_of_making_gives_bodies_a_drawing_and_a_form(string made, int parts)
    {
        var piece = PieceFiles.Of(new Dictionary<string, string> { [PieceWays.Name] = made, ["travel-x"] = "180", ["travel-y"] = "180" }).Value!;

        using var zip = new ZipArchive(new MemoryStream(piece.ThreeMf.ToArray()));
        using var model = zip.GetEntry("3D/3dmodel.model")!.Open();
        Assert.Equal(parts, XElement.Load(model).Descendants().Count(element => element.Name.LocalName == "object"));
        Assert.Equal((piece.Stl.Length - 84) / 50, piece.StlText.Split("endfacet").Length - 1);
        var drawing = XElement.Parse(piece.Svg);
        Assert.Equal(
            piece.Measures.Select(measure => measure.Number.ToString(CultureInfo.InvariantCulture)),
            drawing.Descendants().Where(element => element.Name.LocalName == "text" && int.TryParse(element.Value, out _)).Select(element => element.Value));
        Assert.All(piece.Measures, measure => Assert.Contains($"\n{measure.Number}; ", piece.Form, StringComparison.Ordinal));
    }

    // Both files read back by their own layouts, apart from the writers.
    [Fact]
    public void Both_files_hold_the_volume_that_is_stated()
    {
        var piece = PieceFiles.Of(new Dictionary<string, string> { ["ring"] = "100" }).Value!;
        var bytes = piece.Stl.ToArray();
        var triangles = Enumerable.Range(0, (bytes.Length - 84) / 50).Select(index => Enumerable.Range(3, 9).Select(number => (double)BitConverter.ToSingle(bytes, 84 + (50 * index) + (4 * number))).ToArray());
        using var zip = new ZipArchive(new MemoryStream(piece.ThreeMf.ToArray()));
        using var stream = zip.GetEntry("3D/3dmodel.model")!.Open();
        var packed = XElement.Load(stream).Descendants().Where(element => element.Name.LocalName == "mesh").Sum(VolumeOf);
        var listed = triangles.Sum(numbers => Signed(numbers[..3], numbers[3..6], numbers[6..]));

        Assert.Equal(packed, listed, 0);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{packed / 1000:0.0} cm³"), piece.Room, StringComparison.Ordinal);
    }

    // Numbers of the drawing stand apart from each other, and within it.
    [Fact]
    public void No_number_of_the_drawing_covers_another()
    {
        var drawing = XElement.Parse(PieceFiles.Of(new Dictionary<string, string>()).Value!.Svg);
        double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);
        (double X, double Y, double Radius)[] discs = [.. drawing.Descendants().Where(element => element.Name.LocalName == "circle").Select(element => (Number(element, "cx"), Number(element, "cy"), Number(element, "r")))];
        double[] box = [.. drawing.Attribute("viewBox")!.Value.Split(' ').Select(word => double.Parse(word, CultureInfo.InvariantCulture))];

        Assert.Equal(31, discs.Length);
        foreach (var (index, disc) in discs.Index())
        {
            Assert.All(discs.Skip(index + 1), other => Assert.True(Math.Sqrt(Math.Pow(disc.X - other.X, 2) + Math.Pow(disc.Y - other.Y, 2)) >= disc.Radius + other.Radius, $"{disc} {other}"));
            Assert.True(disc.X > disc.Radius && disc.X < box[2] - disc.Radius && disc.Y > disc.Radius && disc.Y < box[3] - disc.Radius, $"{disc}");
        }
    }

    private static double VolumeOf(XElement mesh)
    {
        double[][] points = [.. Named(mesh, "vertex").Select(vertex => new[] { "x", "y", "z" }.Select(axis => double.Parse(vertex.Attribute(axis)!.Value, CultureInfo.InvariantCulture)).ToArray())];
        return Named(mesh, "triangle").Select(triangle => new[] { "v1", "v2", "v3" }.Select(corner => points[int.Parse(triangle.Attribute(corner)!.Value, CultureInfo.InvariantCulture)]).ToArray())
            .Sum(corners => Signed(corners[0], corners[1], corners[2]));
    }

    private static IEnumerable<XElement> Named(XElement root, string name) => root.Descendants().Where(element => element.Name.LocalName == name);

    private static double Signed(double[] a, double[] b, double[] c) =>
        ((a[0] * ((b[1] * c[2]) - (b[2] * c[1]))) + (a[1] * ((b[2] * c[0]) - (b[0] * c[2]))) + (a[2] * ((b[0] * c[1]) - (b[1] * c[0])))) / 6;
}
