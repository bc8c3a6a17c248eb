namespace Proveout.Engine.Motion;

/// <summary>A closed line of straight sides in a plane, in mm; anticlockwise around material, clockwise around a hole.</summary>
/// <param name="Points">Its corners in order, the first not repeated.</param>
public sealed record Outline(IReadOnlyList<(double Across, double Up)> Points)
{
    /// <summary>Area within; positive when it runs anticlockwise.</summary>
    public double SignedArea
    {
        get
        {
            var sum = 0.0;
            foreach (var (index, point) in Points.Index())
            {
                var next = Points[(index + 1) % Points.Count];
                sum += (point.Across * next.Up) - (next.Across * point.Up);
            }

            return sum / 2;
        }
    }

    /// <summary>The same line the other way round: material becomes a hole.</summary>
    public Outline Reversed => new([.. Points.Reverse()]);

    /// <summary>Every side moved square to itself out of the material: an outer line grows, a hole shrinks.</summary>
    /// <param name="millimetres">How far; negative into the material.</param>
    public Outline Grown(double millimetres) => new([.. Points.Select((_, index) => Corner(index, millimetres))]);

    /// <summary>An eight-sided line whose sides face along both axes and both diagonals.</summary>
    /// <param name="across">Distance of opposite sides.</param>
    /// <param name="centre">Its middle.</param>
    public static Outline EightSided(double across, (double Across, double Up) centre) => Round(across / 2 / Math.Cos(Math.PI / 8), 8, centre);

    /// <summary>A circle as sides whose corners lie on it.</summary>
    public static Outline Circle(double diameter, (double Across, double Up) centre) => Round(diameter / 2, 24, centre);

    /// <summary>A rectangle with its lower left corner at a point.</summary>
    public static Outline Rectangle(double left, double low, double width, double height) =>
        new([(left, low), (left + width, low), (left + width, low + height), (left, low + height)]);

    // Half a side off the axis, so that a side and not a corner faces along it.
    private static Outline Round(double radius, int sides, (double Across, double Up) centre) => new(
    [
        .. Enumerable.Range(0, sides).Select(side => (side + 0.5) * 2 * Math.PI / sides)
            .Select(angle => (centre.Across + (radius * Math.Cos(angle)), centre.Up + (radius * Math.Sin(angle)))),
    ]);

    // Where the moved neighbours meet: along the sum of both normals.
    private (double Across, double Up) Corner(int index, double distance)
    {
        var here = Points[index];
        var one = Normal(Points[(index + Points.Count - 1) % Points.Count], here);
        var other = Normal(here, Points[(index + 1) % Points.Count]);
        var reach = distance / (1 + (one.Across * other.Across) + (one.Up * other.Up));
        return (here.Across + (reach * (one.Across + other.Across)), here.Up + (reach * (one.Up + other.Up)));
    }

    // Material lies left of the way, so that out is right.
    private static (double Across, double Up) Normal((double Across, double Up) from, (double Across, double Up) to)
    {
        var (across, up) = (to.Across - from.Across, to.Up - from.Up);
        var length = Math.Sqrt((across * across) + (up * up));
        return (up / length, -across / length);
    }
}
