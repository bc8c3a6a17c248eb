using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws a part or conductor with its contacts; the half that no lead touches is dimmed.</summary>
internal sealed class ThingPainter(Thing thing, ThingLayout layout)
{
    private static readonly TextStyle Designation = new(15, Bold: true);
    private static readonly TextStyle Name = new(12.5);
    private static readonly TextStyle Side = new(11, "end");

    /// <summary>Everything but the leads.</summary>
    public IEnumerable<XElement> Draw()
    {
        var body = thing.IsConductor
            ? Wire()
            : Shape.Box(8, layout.Top, ThingLayout.Width - 16, layout.RowBottom - layout.Top, 6, "none", Shape.Ink, 1.5);
        yield return Shape.Group(dimmed: false, [body, .. Header()]);
        yield return Shape.Group(dimmed: thing.Touches.All(touch => touch.OnPlug), [.. Row(), .. LeftOut()]);
        if (thing.Apart)
            yield return Shape.Group(dimmed: !thing.Touches.Any(touch => touch.OnPlug), new PlugPainter(thing, layout).Draw());
    }

    private XElement Wire()
    {
        var y = layout.ContactHeight(onPlug: false);
        return Shape.Line(layout.Centre(0) + 14, y, layout.Centre(1) - 14, y, Shape.Ink, 4);
    }

    private IEnumerable<XElement> Header()
    {
        var side = thing.Contacts.Any(thing.IsPinned) ? $"{thing.Connectors}: pins" : thing.Connectors;
        var sideWidth = side.Length == 0 ? 0 : Math.Min(110, Side.Width(PlainText.Clean(side)));
        var available = ThingLayout.Right - ThingLayout.Left - sideWidth - 12;
        var designationWidth = Math.Min(available * 0.6, Designation.Width(PlainText.Clean(thing.Designation)));
        yield return Shape.Text(thing.Designation, ThingLayout.Left, layout.HeaderLine, Designation, designationWidth);
        if (thing.Name.Length > 0)
            yield return Shape.Text(thing.Name, ThingLayout.Left + designationWidth + 8, layout.HeaderLine, Name, available - designationWidth - 8);
        if (side.Length > 0)
            yield return Shape.Text(side, ThingLayout.Right, layout.HeaderLine, Side, sideWidth);
    }

    private IEnumerable<XElement> Row() =>
        thing.Contacts.Select((contact, index) => ContactSymbol.Pole(thing, layout, index, onPlug: false));

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
}
