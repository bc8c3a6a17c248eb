using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws the leads on a thing: a tag with the lead's word, and a line to the contact. Red is round, black is square.</summary>
internal sealed class LeadPainter(Thing thing, ThingLayout layout)
{
    private const double Space = 12;
    private const double NameSpace = 6;
    private const double NameMargin = 8;
    private static readonly TextStyle NameStyle = new(12, Bold: true);
    private static readonly TextStyle NameFirstStyle = NameStyle with { Anchor = "end" };
    private static readonly TextStyle WordStyle = new(12, "middle", Bold: true, Colour: "#ffffff");

    /// <summary>All leads on the thing; their lines do not cross, since tags stand in the order of their contacts.</summary>
    public IEnumerable<XElement> Draw()
    {
        var touches = thing.Touches.OrderBy(touch => layout.Centre(touch.Contact)).ThenBy(touch => touch.Lead).ToList();
        var widths = Widths(touches.ConvertAll(WholeWidth));
        return Arrangements(touches, widths).MinBy(tags => tags.Sum(tag => Math.Abs(tag.WordCentre - layout.Centre(tag.Touch.Contact))))!.Select(DrawOne);
    }

    /// <summary>Widths that fit side by side: a tag that needs less than its share leaves the rest to the other.</summary>
    private static List<double> Widths(List<double> wanted)
    {
        var room = ThingLayout.Right - ThingLayout.Left - (Space * (wanted.Count - 1));
        var share = room / wanted.Count;
        var spare = wanted.Sum(width => Math.Max(0, share - width));
        return wanted.ConvertAll(width => Math.Min(width, share + (width > share ? spare : 0)));
    }

    /// <summary>Every way of putting each name right or left of its word.</summary>
    private IEnumerable<List<LeadTag>> Arrangements(List<Touch> touches, List<double> widths)
    {
        for (var choice = 0; choice < 1 << touches.Count; choice++)
            yield return Place(touches.Select((touch, order) => new LeadTag(touch, 0, widths[order], (choice >> order & 1) == 1)).ToList());
    }

    /// <summary>Width of the word's own shape.</summary>
    public static double WordWidth(Touch touch) => touch.Lead == Lead.Red ? 46 : 52;

    private static string Word(Touch touch) => touch.Lead == Lead.Red ? "red" : "black";

    private static string Colour(Touch touch) => touch.Lead == Lead.Red ? Shape.Red : Shape.Black;

    private static string Side(Touch touch) => touch.Side.Length == 0 ? "" : $", {PlainText.Clean(touch.Side)}";

    private string Name(Touch touch) => PlainText.Clean(thing.Contacts[touch.Contact].Name);

    private double WholeWidth(Touch touch) =>
        WordWidth(touch) + NameSpace + NameMargin + NameStyle.Width(Name(touch) + Side(touch));

    /// <summary>The name as far as it fits; the side goes first, for it says which half to touch.</summary>
    private string Shown(Touch touch, double width)
    {
        var nameWidth = Math.Min(width / 2, NameStyle.Width(Name(touch)));
        var side = NameStyle.Fit(Side(touch), width - nameWidth);
        return NameStyle.Fit(Name(touch), width - NameStyle.Width(side)) + side;
    }

    /// <summary>Puts the words under their contacts where there is room, and pushes tags apart where there is not.</summary>
    private List<LeadTag> Place(List<LeadTag> tags)
    {
        var free = ThingLayout.Left;
        for (var order = 0; order < tags.Count; order++)
        {
            var wanted = layout.Centre(tags[order].Touch.Contact) - (tags[order].WordCentre - tags[order].Left);
            tags[order] = tags[order] with { Left = Math.Max(free, wanted) };
            free = tags[order].Left + tags[order].Width + Space;
        }

        var end = ThingLayout.Right;
        for (var order = tags.Count - 1; order >= 0; order--)
        {
            tags[order] = tags[order] with { Left = Math.Min(tags[order].Left, end - tags[order].Width) };
            end = tags[order].Left - Space;
        }

        return tags;
    }

    private XElement DrawOne(LeadTag tag)
    {
        var (touch, wordWidth) = (tag.Touch, WordWidth(tag.Touch));
        var nameWidth = tag.Width - wordWidth - NameSpace - NameMargin;
        var radius = touch.Lead == Lead.Red ? ThingLayout.TagHeight / 2 : 0;
        var baseLine = layout.TagTop + (ThingLayout.TagHeight / 2) + 4.5;
        var nameEdge = tag.WordCentre + ((tag.NameFirst ? -1 : 1) * ((wordWidth / 2) + NameSpace));
        return Shape.Group(
            dimmed: false,
            Shape.Title($"{Word(touch)} lead on {thing.Designation} {Name(touch)}{Side(touch)}"),
            Cable(touch, tag.WordCentre),
            Mark(touch),
            Shape.Box(tag.Left, layout.TagTop, tag.Width, ThingLayout.TagHeight, radius, "none", Edge(touch), 1.5),
            Shape.Box(tag.WordCentre - (wordWidth / 2), layout.TagTop, wordWidth, ThingLayout.TagHeight, radius, Colour(touch), Edge(touch), 1.5),
            Shape.Text(Word(touch), tag.WordCentre, baseLine, WordStyle, wordWidth),
            Shape.Text(Shown(touch, nameWidth), nameEdge, baseLine, tag.NameFirst ? NameFirstStyle : NameStyle, nameWidth));
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
