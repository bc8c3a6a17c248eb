using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Proveout.Publish.Solids;

/// <summary>
/// Bodies as a triangle list in STL, binary or text. The format has no unit; by custom one is a millimetre. Its layout: 80 bytes of heading, a count,
/// and for each triangle a normal, three corners in single precision and two empty bytes, little-endian (common practice; no standard body owns it).
/// </summary>
public static class StlFile
{
    private const int HeadBytes = 80;
    private const int TriangleBytes = 50;

    /// <summary>In bytes.</summary>
    public static byte[] Binary(string title, IReadOnlyList<Solid> solids)
    {
        ArgumentNullException.ThrowIfNull(solids);
        (Point Normal, Point[] Corners)[] triangles = [.. solids.SelectMany(TrianglesOf)];
        var bytes = new byte[HeadBytes + 4 + (TriangleBytes * triangles.Length)];
        // A heading that began with "solid" would be taken for the text form.
        Encoding.ASCII.GetBytes(Plain($"Binary STL in millimetres: {title}", HeadBytes)).CopyTo(bytes, 0);
        BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(HeadBytes), (uint)triangles.Length);
        var at = HeadBytes + 4;
        foreach (var (normal, corners) in triangles)
        {
            foreach (var point in corners.Prepend(normal))
                foreach (var value in (ReadOnlySpan<float>)[(float)point.X, (float)point.Y, (float)point.Z])
                {
                    BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), value);
                    at += 4;
                }

            at += 2;
        }

        return bytes;
    }

    /// <summary>In text, a solid for each body.</summary>
    public static string Text(IReadOnlyList<Solid> solids)
    {
        ArgumentNullException.ThrowIfNull(solids);
        var text = new StringBuilder();
        foreach (var solid in solids)
        {
            var name = Plain(solid.Name, HeadBytes);
            text.Append(CultureInfo.InvariantCulture, $"solid {name}\n");
            foreach (var (normal, corners) in TrianglesOf(solid))
            {
                text.Append(CultureInfo.InvariantCulture, $"facet normal {Words(normal)}\nouter loop\n");
                foreach (var corner in corners)
                    text.Append(CultureInfo.InvariantCulture, $"vertex {Words(corner)}\n");
                text.Append("endloop\nendfacet\n");
            }

            text.Append(CultureInfo.InvariantCulture, $"endsolid {name}\n");
        }

        return text.ToString();
    }

    private static IEnumerable<(Point Normal, Point[] Corners)> TrianglesOf(Solid solid)
    {
        foreach (var (first, second, third) in solid.Triangles)
        {
            Point[] corners = [Of(solid.Corners[first]), Of(solid.Corners[second]), Of(solid.Corners[third])];
            yield return (Point.Normal(corners[0], corners[1], corners[2]), corners);
        }
    }

    private static Point Of((double X, double Y, double Z) corner) => new(corner.X, corner.Y, corner.Z);

    // Adding zero turns -0 into 0.
    private static string Words(Point point) => string.Create(CultureInfo.InvariantCulture, $"{(float)(point.X + 0.0):0.######} {(float)(point.Y + 0.0):0.######} {(float)(point.Z + 0.0):0.######}");

    private static string Plain(string text, int most)
    {
        var plain = string.Concat(text.Where(letter => letter is >= ' ' and <= '~'));
        return plain.Length <= most ? plain : plain[..most];
    }

    private readonly record struct Point(double X, double Y, double Z)
    {
        public static Point Normal(Point a, Point b, Point c)
        {
            var (ux, uy, uz) = (b.X - a.X, b.Y - a.Y, b.Z - a.Z);
            var (vx, vy, vz) = (c.X - a.X, c.Y - a.Y, c.Z - a.Z);
            var (x, y, z) = ((uy * vz) - (uz * vy), (uz * vx) - (ux * vz), (ux * vy) - (uy * vx));
            var length = Math.Sqrt((x * x) + (y * y) + (z * z));
            return new(x / length, y / length, z / length);
        }
    }
}
