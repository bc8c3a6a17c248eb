using System.Globalization;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Symbols of contacts as IEC 60617 draws them (from memory): terminal, a circle; pin, a filled bar; socket, an open arc.</summary>
internal static class ContactSymbol
{
    /// <summary>The symbol of a terminal, or of one half of a plug-and-socket joint that is apart.</summary>
    public static XElement Draw(bool apart, bool onPlug, double x, double y) =>
        !apart ? Shape.Circle(x, y, 4.5, "none", Shape.Ink, 1.8)
        : onPlug ? Socket(x, y)
        : Shape.Box(x - 2.5, y - 6, 5, 12, 0, Shape.Ink, "none", 0);

    private static XElement Socket(double x, double y) =>
        Shape.Path(string.Create(CultureInfo.InvariantCulture, $"M{x - 5:0.##} {y - 4:0.##} a5 5 0 0 0 10 0 M{x:0.##} {y + 1:0.##} v6"), "none", Shape.Ink, 2);
}
