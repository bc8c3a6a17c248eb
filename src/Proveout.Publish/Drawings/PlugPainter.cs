using System.Globalization;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws the plugs that are pulled off a part, each in an outline of its own; open at the side where contacts are left out.</summary>
internal sealed class PlugPainter(Thing thing, ThingLayout layout)
{
    private static readonly TextStyle Small = new(10.5, "middle");

    /// <summary>All of them.</summary>
    public IEnumerable<XElement> Draw()
    {
        var plugs = Plugs();
        return plugs.SelectMany(poles => DrawOne(poles, plugs.Count == 1));
    }

    /// <summary>Contacts drawn of each plug, by index.</summary>
    private List<List<int>> Plugs() => Enumerable.Range(0, thing.Contacts.Count)
        .Where(index => thing.Contacts[index].Apart)
        .GroupBy(index => thing.Contacts[index].Connector)
        .Select(plug => plug.ToList())
        .ToList();

    private IEnumerable<XElement> DrawOne(List<int> poles, bool alone)
    {
        var (left, right) = (layout.Centre(poles[0]) - (layout.SlotWidth / 2), layout.Centre(poles[^1]) + (layout.SlotWidth / 2));
        yield return Outline(poles, left, right);
        foreach (var pole in poles)
            yield return ContactSymbol.Pole(thing, layout, pole, onPlug: true);
        foreach (var stub in poles.SelectMany(Stub))
            yield return stub;
        var connector = thing.Contacts[poles[0]].Connector;
        var middle = alone ? ThingLayout.Width / 2 : (left + right) / 2;
        var width = alone ? ThingLayout.Right - ThingLayout.Left : right - left - 4;
        var line = layout.PlugBottom + ThingLayout.StubHeight + 28;
        yield return Shape.Text($"{connector}: plug{(alone ? ", pulled off" : "")}", middle, line, Small, width);
    }

    private XElement Outline(List<int> poles, double left, double right)
    {
        var (top, bottom) = (layout.PlugTop, layout.PlugBottom);
        var closedLeft = thing.Contacts[poles[0]].ConnectorCutBefore ? "" : "V" + Text(top);
        var closedRight = thing.Contacts[poles[^1]].ConnectorCutAfter ? $"M{Text(right)} {Text(bottom)}" : "V" + Text(bottom);
        var data = $"M{Text(left)} {Text(top)} H{Text(right)} {closedRight} H{Text(left)} {closedLeft}";
        return Shape.Path(data.TrimEnd(), "none", Shape.Ink, 1.5);
    }

    private IEnumerable<XElement> Stub(int pole)
    {
        var x = layout.Centre(pole);
        if (thing.Contacts[pole].Conductors.Length == 0)
            yield break;
        yield return Shape.Line(x, layout.PlugBottom, x, layout.PlugBottom + ThingLayout.StubHeight, Shape.Ink, 2.5);
        yield return Shape.Text(thing.Contacts[pole].Conductors, x, layout.PlugBottom + ThingLayout.StubHeight + 12, Small, layout.SlotWidth - 5);
    }

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
