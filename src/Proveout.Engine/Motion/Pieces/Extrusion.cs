namespace Proveout.Engine.Motion;

/// <summary>Makes a solid of a flat shape by drawing it through levels.</summary>
internal static class Extrusion
{
    /// <summary>The solid.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="levels">Where it passes, rising, and by how much its walls have grown there.</param>
    /// <param name="place">Turns what lies across, up and along into a place; keeps right-handedness.</param>
    public static SolidMesh Of(FlatShape shape, IReadOnlyList<(double Along, double Growth)> levels, Func<double, double, double, SpaceVector> place)
    {
        var count = shape.Lines.Sum(line => line.Points.Count);
        List<SpaceVector> corners = [];
        foreach (var (along, growth) in levels)
            corners.AddRange(shape.Grown(growth).Lines.SelectMany(line => line.Points).Select(point => place(point.Across, point.Up, along)));
        var top = (levels.Count - 1) * count;
        return new(
            corners,
            [
                .. EarClipping.Cut(shape.Grown(levels[0].Growth)).Select(triangle => (triangle.First, triangle.Third, triangle.Second)),
                .. Enumerable.Range(0, levels.Count - 1).SelectMany(level => Walls(shape, level * count, count)),
                .. EarClipping.Cut(shape.Grown(levels[^1].Growth)).Select(triangle => (triangle.First + top, triangle.Second + top, triangle.Third + top)),
            ]);
    }

    private static IEnumerable<(int First, int Second, int Third)> Walls(FlatShape shape, int level, int count)
    {
        var first = level;
        foreach (var line in shape.Lines)
        {
            for (var index = 0; index < line.Points.Count; index++)
            {
                var (from, to) = (first + index, first + ((index + 1) % line.Points.Count));
                yield return (from, to, to + count);
                yield return (from, to + count, from + count);
            }

            first += line.Points.Count;
        }
    }
}
