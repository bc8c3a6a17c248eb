using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using System.Xml.Schema;
using Proveout.Publish.Solids;

namespace Proveout.Publish.Tests.Solids;

public sealed partial class SolidFileTests
{
    private static readonly XNamespace Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    // A tetrahedron of volume 2·3·4/6 = 4 and a box of 1 × 2 × 3.
    private static readonly Solid Tetrahedron = new("tetrahedron", [(0, 0, 0), (2, 0, 0), (0, 3, 0), (0, 0, 4)], [(0, 2, 1), (0, 1, 3), (0, 3, 2), (1, 2, 3)]);

    private static readonly Solid Box = new(
        "box <&> \"1\"",
        [(10, 0, 0), (11, 0, 0), (11, 2, 0), (10, 2, 0), (10, 0, 3), (11, 0, 3), (11, 2, 3), (10, 2, 3)],
        [(0, 2, 1), (0, 3, 2), (4, 5, 6), (4, 6, 7), (0, 1, 5), (0, 5, 4), (1, 2, 6), (1, 6, 5), (2, 3, 7), (2, 7, 6), (3, 0, 4), (3, 4, 7)]);

    private static readonly byte[] Package = ThreeMfFile.Of("Test & piece", "Made to be measured.", [Tetrahedron, Box]);

    [Fact]
    public void Binary_stl_read_by_its_layout_holds_the_same_volume()
    {
        var bytes = StlFile.Binary("test", [Tetrahedron, Box]);

        Assert.False(Encoding.ASCII.GetString(bytes, 0, 80).StartsWith("solid", StringComparison.Ordinal));
        Assert.Equal(16u, BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(80)));
        Assert.Equal(84 + (16 * 50), bytes.Length);
        var volume = 0.0;
        for (var at = 84; at < bytes.Length; at += 50)
        {
            var numbers = Enumerable.Range(0, 12).Select(index => (double)BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(at + (4 * index)))).ToArray();
            volume += Signed(numbers[3..6], numbers[6..9], numbers[9..12]);
            AssertNormal(numbers[..3], numbers[3..6], numbers[6..9], numbers[9..12]);
            Assert.Equal(0, BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at + 48)));
        }

        Assert.Equal(10, volume, 5);
    }

    [Fact]
    public void Text_stl_read_by_its_words_holds_the_same_volume()
    {
        var text = StlFile.Text([Tetrahedron, Box]);

        Assert.StartsWith("solid tetrahedron\nfacet normal ", text, StringComparison.Ordinal);
        Assert.Equal(16, text.Split("endfacet").Length - 1);
        double[][] points = [.. Vertex().Matches(text).Select(match => match.Groups[1].Value.Split(' ').Select(word => double.Parse(word, CultureInfo.InvariantCulture)).ToArray())];
        Assert.Equal(10, points.Chunk(3).Sum(corners => Signed(corners[0], corners[1], corners[2])), 5);
        Assert.DoesNotContain("-0 ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_package_has_the_parts_that_open_packaging_and_the_core_specification_ask_for()
    {
        using var zip = new ZipArchive(new MemoryStream(Package));

        Assert.Equal(["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"], zip.Entries.Select(entry => entry.FullName));
        XNamespace types = "http://schemas.openxmlformats.org/package/2006/content-types";
        Assert.Equal(
            [("rels", "application/vnd.openxmlformats-package.relationships+xml"), ("model", "application/vnd.ms-package.3dmanufacturing-3dmodel+xml")],
            Xml(zip, "[Content_Types].xml").Elements(types + "Default").Select(item => (item.Attribute("Extension")!.Value, item.Attribute("ContentType")!.Value)));
        var start = Xml(zip, "_rels/.rels").Elements().Single();
        Assert.Equal("http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel", start.Attribute("Type")!.Value);
        Assert.NotNull(zip.GetEntry(start.Attribute("Target")!.Value.TrimStart('/')));
    }

    [Fact]
    public void The_model_keeps_the_rules_of_the_core_schema()
    {
        using var zip = new ZipArchive(new MemoryStream(Package));
        var model = new XDocument(Xml(zip, "3D/3dmodel.model"));
        List<string> breaches = [];

        model.Validate(CoreSchema.Rules, (_, breach) => breaches.Add(breach.Message));

        Assert.Empty(breaches);
        Assert.Equal("millimeter", model.Root!.Attribute("unit")!.Value);
        // Metadata without a namespace must have one of the names that the specification lists (3.4.1).
        Assert.All(model.Root.Elements(Core + "metadata"), item => Assert.Contains(item.Attribute("name")!.Value, new[] { "Title", "Designer", "Description", "Copyright", "LicenseTerms", "Rating", "CreationDate", "ModificationDate", "Application" }));
        // Each item builds an object that stands before it, each object once.
        Assert.Equal(model.Descendants(Core + "object").Select(item => item.Attribute("id")!.Value), model.Descendants(Core + "item").Select(item => item.Attribute("objectid")!.Value));
    }

    [Fact]
    public void The_rules_notice_a_breach()
    {
        using var zip = new ZipArchive(new MemoryStream(Package));
        var model = new XDocument(Xml(zip, "3D/3dmodel.model"));
        model.Descendants(Core + "vertex").First().SetAttributeValue("x", "1,5");
        model.Descendants(Core + "triangle").First().SetAttributeValue("v1", "-1");
        List<string> breaches = [];

        model.Validate(CoreSchema.Rules, (_, breach) => breaches.Add(breach.Message));

        Assert.Equal(2, breaches.Count);
    }

    [Fact]
    public void The_meshes_of_the_package_are_closed_and_hold_their_volume()
    {
        using var zip = new ZipArchive(new MemoryStream(Package));
        double[] volumes = [4, 6];
        foreach (var (index, mesh) in Xml(zip, "3D/3dmodel.model").Descendants(Core + "mesh").Index())
        {
            double[][] points = [.. mesh.Descendants(Core + "vertex").Select(vertex => new[] { "x", "y", "z" }.Select(axis => double.Parse(vertex.Attribute(axis)!.Value, CultureInfo.InvariantCulture)).ToArray())];
            int[][] triangles = [.. mesh.Descendants(Core + "triangle").Select(triangle => new[] { "v1", "v2", "v3" }.Select(corner => int.Parse(triangle.Attribute(corner)!.Value, CultureInfo.InvariantCulture)).ToArray())];
            Assert.All(triangles, triangle => Assert.Equal(3, triangle.Distinct().Count()));
            Assert.All(triangles.SelectMany(triangle => triangle), corner => Assert.InRange(corner, 0, points.Length - 1));
            var sides = triangles.SelectMany(triangle => Enumerable.Range(0, 3).Select(side => (From: triangle[side], To: triangle[(side + 1) % 3]))).ToArray();
            // 4.1: each side is shared by two triangles, once in each direction.
            Assert.Equal(sides.Length, sides.Distinct().Count());
            Assert.All(sides, side => Assert.Contains((side.To, side.From), sides));
            Assert.Equal(volumes[index], triangles.Sum(triangle => Signed(points[triangle[0]], points[triangle[1]], points[triangle[2]])), 6);
        }
    }

    [Fact]
    public void The_same_bodies_give_the_same_bytes() => Assert.Equal(Package, ThreeMfFile.Of("Test & piece", "Made to be measured.", [Tetrahedron, Box]));

    private static XElement Xml(ZipArchive zip, string name)
    {
        using var stream = zip.GetEntry(name)!.Open();
        return XElement.Load(stream);
    }

    private static double Signed(double[] a, double[] b, double[] c) =>
        ((a[0] * ((b[1] * c[2]) - (b[2] * c[1]))) + (a[1] * ((b[2] * c[0]) - (b[0] * c[2]))) + (a[2] * ((b[0] * c[1]) - (b[1] * c[0])))) / 6;

    private static void AssertNormal(double[] normal, double[] a, double[] b, double[] c)
    {
        Assert.Equal(1, Dot(normal, normal), 5);
        Assert.Equal(0, Dot(normal, Less(b, a)), 5);
        Assert.Equal(0, Dot(normal, Less(c, a)), 5);
    }

    private static double Dot(double[] one, double[] other) => one.Zip(other, (a, b) => a * b).Sum();

    private static double[] Less(double[] one, double[] other) => [.. one.Zip(other, (a, b) => a - b)];

    [GeneratedRegex("vertex ([^\n]+)")]
    private static partial Regex Vertex();
}
