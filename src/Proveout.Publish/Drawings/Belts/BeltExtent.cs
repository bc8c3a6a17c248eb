using System.Globalization;

namespace Proveout.Publish.Drawings;

/// <summary>The part of a belt plane that a drawing shows, in millimetres of the machine.</summary>
/// <param name="Left">Its left edge.</param>
/// <param name="Right">Its right edge.</param>
/// <param name="Low">Its lower edge.</param>
/// <param name="High">Its upper edge.</param>
/// <param name="Belts">Belts whose names stand below.</param>
internal readonly record struct BeltExtent(double Left, double Right, double Low, double High, int Belts)
{
    /// <summary>In the words of SVG, where upward is negative.</summary>
    public string ViewBox => string.Create(CultureInfo.InvariantCulture, $"{Left:0.##} {-High:0.##} {Right - Left:0.##} {Height:0.##}");

    public double Height => High - Low + (20 * Belts);

    public static BeltExtent Of(IReadOnlyList<BeltMark> marks, int belts, double margin) => new(
        marks.Min(mark => mark.X - mark.Radius) - margin,
        marks.Max(mark => mark.X + mark.Radius) + margin,
        marks.Min(mark => mark.Y - mark.Radius) - margin,
        marks.Max(mark => mark.Y + mark.Radius) + margin,
        belts);
}
