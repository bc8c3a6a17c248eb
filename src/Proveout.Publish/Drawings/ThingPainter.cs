using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws a part or conductor with its contacts; the half that no lead touches is dimmed.</summary>
internal sealed class ThingPainter(Thing thing, ThingLayout layout)
{
    private static readonly TextStyle Designation = new(15, Bold: true);
    private static readonly TextStyle Name = new(12.5);
    private static readonly TextStyle Side = new(11, "end");
    private static readonly TextStyle ContactName = new(11, "middle");
    private static readonly TextStyle Small = new(10.5, "middle");

    /// <summary>Everything but the leads.</summary>
    public IEnumerable<XElement> Draw()
    {
        var body = thing.IsConductor ? Wire() : Outline(8, layout.Top, ThingLayout.Width - 16, layout.RowBottom - layout.Top, 6);
        yield return Shape.Group(dimmed: false, [body, .. Header()]);
        yield return Shape.Group(dimmed: thing.Touches.All(touch => touch.OnPlug), [.. Row(onPlug: false), .. LeftOut()]);
        if (thing.Apart)
            yield return Shape.Group(dimmed: !thing.Touches.Any(touch => touch.OnPlug), Plug());
    }

    private static XElement Outline(double x, double y, double width, double height, double radius) =>
        Shape.Box(x, y, width, height, radius, "none", Shape.Ink, 1.5);

    private XElement Wire()
    {
        var y = layout.ContactHeight(onPlug: false);
        return Shape.Line(layout.Centre(0) + 14, y, layout.Centre(1) - 14, y, Shape.Ink, 4);
    }

    private IEnumerable<XElement> Header()
    {
        var side = thing.Apart ? $"{thing.Connectors}: pins" : thing.Connectors;
        var sideWidth = side.Length == 0 ? 0 : Math.Min(110, TextFit.Width(PlainText.Clean(side), Side.Size));
        var available = ThingLayout.Right - ThingLayout.Left - sideWidth - 12;
        var designationWidth = Math.Min(available * 0.6, TextFit.Width(PlainText.Clean(thing.Designation), Designation.Size, bold: true));
        yield return Shape.Text(thing.Designation, ThingLayout.Left, layout.HeaderLine, Designation, designationWidth);
        if (thing.Name.Length > 0)
            yield return Shape.Text(thing.Name, ThingLayout.Left + designationWidth + 8, layout.HeaderLine, Name, available - designationWidth - 8);
        if (side.Length > 0)
            yield return Shape.Text(side, ThingLayout.Right, layout.HeaderLine, Side, sideWidth);
    }

    private IEnumerable<XElement> Row(bool onPlug) =>
        thing.Contacts.Select((contact, index) => Pole(contact, index, onPlug))
            .Where((_, index) => !onPlug || thing.Contacts[index].Apart);

    private XElement Pole(Contact contact, int index, bool onPlug)
    {
        var (x, y) = (layout.Centre(index), layout.ContactHeight(onPlug));
        var title = $"{thing.Designation} {contact.Name}{(contact.Reachable ? "" : ", out of reach of a probe")}";
        return Shape.Group(
            dimmed: !contact.Reachable,
            Shape.Title(title),
            ContactSymbol.Draw(contact.Apart, onPlug, x, y),
            Shape.Text(contact.Name, x, layout.NameLine(onPlug), ContactName, layout.SlotWidth - 5));
    }

    /// <summary>Three dots where contacts are left out.</summary>
    private IEnumerable<XElement> LeftOut()
    {
        for (var index = 0; index < thing.Contacts.Count; index++)
            if (thing.Contacts[index].LeftOutBefore)
                yield return Dots(layout.Centre(index) - (layout.SlotWidth / 2) - 8);
        if (thing.LeftOutAfter)
            yield return Dots(layout.Centre(thing.Contacts.Count - 1) + (layout.SlotWidth / 2) + 8);
    }

    private XElement Dots(double x)
    {
        var y = layout.ContactHeight(onPlug: false);
        return Shape.Group(
            dimmed: false,
            [Shape.Title("More terminals, not drawn"), .. new[] { -4.5, 0, 4.5 }.Select(step => Shape.Circle(x + step, y, 1.3, Shape.Ink, "none", 0))]);
    }

    private IEnumerable<XElement> Plug()
    {
        var poles = Enumerable.Range(0, thing.Contacts.Count).Where(index => thing.Contacts[index].Apart).ToList();
        var (left, right) = (layout.Centre(poles[0]) - (layout.SlotWidth / 2), layout.Centre(poles[^1]) + (layout.SlotWidth / 2));
        yield return Outline(left, layout.PlugTop, right - left, ThingLayout.RowHeight, 3);
        foreach (var pole in Row(onPlug: true).Concat(poles.SelectMany(Stub)))
            yield return pole;
        var label = $"{string.Join(", ", poles.Select(pole => thing.Contacts[pole].Connector).Distinct())}: plug, pulled off";
        yield return Shape.Text(label, ThingLayout.Width / 2, layout.PlugBottom + ThingLayout.StubHeight + 28, Small, ThingLayout.Right - ThingLayout.Left);
    }

    private IEnumerable<XElement> Stub(int pole)
    {
        var x = layout.Centre(pole);
        if (thing.Contacts[pole].Conductors.Length == 0)
            yield break;
        yield return Shape.Line(x, layout.PlugBottom, x, layout.PlugBottom + ThingLayout.StubHeight, Shape.Ink, 2.5);
        yield return Shape.Text(thing.Contacts[pole].Conductors, x, layout.PlugBottom + ThingLayout.StubHeight + 12, Small, layout.SlotWidth - 5);
    }
}
