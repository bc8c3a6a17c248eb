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

    /// <summary>Room for all marks and, below them, for the names of the belts.</summary>
    public static BeltExtent Of(IReadOnlyList<BeltMark> marks, IReadOnlyList<DrawnBelt> belts)
    {
        var left = marks.Min(mark => mark.X - mark.Radius) - BeltDrawing.Margin;
        return new(
            left,
            Math.Max(marks.Max(mark => mark.X + mark.Radius) + BeltDrawing.Margin, left + BeltDrawing.LegendWidth(belts)),
            marks.Min(mark => mark.Y - mark.Radius) - BeltDrawing.Margin,
            marks.Max(mark => mark.Y + mark.Radius) + BeltDrawing.Margin,
            belts.Count);
    }
}
