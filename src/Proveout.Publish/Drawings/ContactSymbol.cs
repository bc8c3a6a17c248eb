using System.Globalization;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Symbols of contacts as IEC 60617 draws them (from memory): terminal, a circle; pin, a filled bar; socket, an open arc.</summary>
internal static class ContactSymbol
{
    private static readonly TextStyle NameStyle = new(11, "middle");

    /// <summary>A contact with its name, dim when a probe cannot touch it.</summary>
    public static XElement Pole(Thing thing, ThingLayout layout, int index, bool onPlug)
    {
        var contact = thing.Contacts[index];
        var x = layout.Centre(index);
        return Shape.Group(
            dimmed: !contact.Reachable,
            Shape.Title($"{thing.Designation} {contact.Name}{(contact.Reachable ? "" : ", out of reach of a probe")}"),
            Draw(thing.IsPinned(contact), onPlug, x, layout.ContactHeight(onPlug)),
            Shape.Text(contact.Name, x, layout.NameLine(onPlug), NameStyle, layout.SlotWidth - 5));
    }

    /// <summary>The symbol of a terminal, or of one half of a plug-and-socket joint that is apart.</summary>
    private static XElement Draw(bool pinned, bool onPlug, double x, double y) =>
        !pinned ? Shape.Circle(x, y, 4.5, "none", Shape.Ink, 1.8)
        : onPlug ? Socket(x, y)
        : Shape.Box(x - 2.5, y - 6, 5, 12, 0, Shape.Ink, "none", 0);

    private static XElement Socket(double x, double y) =>
        Shape.Path(string.Create(CultureInfo.InvariantCulture, $"M{x - 5:0.##} {y - 4:0.##} a5 5 0 0 0 10 0 M{x:0.##} {y + 1:0.##} v6"), "none", Shape.Ink, 2);
}
