using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws the leads on a thing: a tag with the lead's word, and a line to the contact. Red is round, black is square.</summary>
internal sealed class LeadPainter(Thing thing, ThingLayout layout)
{
    private const double Space = 12;
    private const double NameSpace = 7;
    private static readonly TextStyle NameStyle = new(13, Bold: true);
    private static readonly TextStyle WordStyle = new(12.5, "middle", Bold: true, Colour: "#ffffff");

    /// <summary>All leads on the thing; their lines do not cross, since tags stand in the order of their contacts.</summary>
    public IEnumerable<XElement> Draw()
    {
        var touches = thing.Touches.OrderBy(touch => layout.Centre(touch.Contact)).ThenBy(touch => touch.Lead).ToList();
        var widest = (ThingLayout.Right - ThingLayout.Left - (Space * (touches.Count - 1))) / touches.Count;
        var lefts = Places(touches, touches.ConvertAll(touch => Math.Min(widest, WholeWidth(touch))));
        return touches.Select((touch, order) => DrawOne(touch, lefts[order], widest));
    }

    private static double WordWidth(Touch touch) => touch.Lead == Lead.Red ? 46 : 52;

    private static string Word(Touch touch) => touch.Lead == Lead.Red ? "red" : "black";

    private static string Colour(Touch touch) => touch.Lead == Lead.Red ? Shape.Red : Shape.Black;

    private string Place(Touch touch)
    {
        var name = PlainText.Clean(thing.Contacts[touch.Contact].Name);
        return touch.Side.Length == 0 ? name : $"{name}, {PlainText.Clean(touch.Side)}";
    }

    private double WholeWidth(Touch touch) => WordWidth(touch) + NameSpace + TextFit.Width(Place(touch), NameStyle.Size, bold: true);

    /// <summary>Left ends of the tags: under their contacts where there is room, pushed apart where there is not.</summary>
    private double[] Places(List<Touch> touches, List<double> widths)
    {
        var lefts = new double[touches.Count];
        var free = ThingLayout.Left;
        for (var order = 0; order < touches.Count; order++)
        {
            lefts[order] = Math.Max(free, layout.Centre(touches[order].Contact) - (WordWidth(touches[order]) / 2));
            free = lefts[order] + widths[order] + Space;
        }

        var end = ThingLayout.Right;
        for (var order = touches.Count - 1; order >= 0; order--)
        {
            lefts[order] = Math.Min(lefts[order], end - widths[order]);
            end = lefts[order] - Space;
        }

        return lefts;
    }

    private XElement DrawOne(Touch touch, double left, double widest)
    {
        var wordWidth = WordWidth(touch);
        var middle = layout.TagTop + (ThingLayout.TagHeight / 2);
        return Shape.Group(
            dimmed: false,
            Shape.Title($"{Word(touch)} lead on {thing.Designation} {Place(touch)}"),
            Cable(touch, left + (wordWidth / 2)),
            Mark(touch),
            Shape.Box(left, layout.TagTop, wordWidth, ThingLayout.TagHeight, touch.Lead == Lead.Red ? 11 : 0, Colour(touch), Edge(touch), 1.5),
            Shape.Text(Word(touch), left + (wordWidth / 2), middle + 4.5, WordStyle, wordWidth),
            Shape.Text(Place(touch), left + wordWidth + NameSpace, middle + 4.5, NameStyle, widest - wordWidth - NameSpace));
    }

    private static string Edge(Touch touch) => touch.Lead == Lead.Red ? Shape.Red : Shape.Ink;

    /// <summary>From the tag straight to the mark round the contact, below the part or above the plug.</summary>
    private XElement Cable(Touch touch, double tagCentre)
    {
        var x = layout.Centre(touch.Contact);
        var start = touch.OnPlug ? layout.TagTop + ThingLayout.TagHeight : layout.TagTop;
        var end = layout.ContactHeight(touch.OnPlug) + (touch.OnPlug ? -10 : 10);
        var cable = new XElement[] { Shape.Line(tagCentre, start, x, end, Edge(touch), 4.5), Shape.Line(tagCentre, start, x, end, Colour(touch), 2.5) };
        return Shape.Group(dimmed: false, cable);
    }

    private XElement Mark(Touch touch)
    {
        var (x, y) = (layout.Centre(touch.Contact), layout.ContactHeight(touch.OnPlug));
        return touch.Lead == Lead.Red
            ? Shape.Circle(x, y, 9.5, "none", Shape.Red, 3)
            : Shape.Group(dimmed: false, Shape.Box(x - 9, y - 9, 18, 18, 0, "none", Shape.Ink, 4.5), Shape.Box(x - 9, y - 9, 18, 18, 0, "none", Shape.Black, 2.5));
    }
}
