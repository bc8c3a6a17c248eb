using System.Globalization;
using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>A conductor's way as a strip: terminal, routes with their lengths, terminal.</summary>
internal sealed class WayStrip(MachineLayout layout, ConductorWay way, double top)
{
    private const double EndWidth = 48;
    private const double Line = 13;
    private static readonly TextStyle Head = new(3.2, Bold: true);
    private static readonly TextStyle Centred = new(Paper.SmallSize, "middle");

    public IEnumerable<XElement> Draw()
    {
        var (start, end) = (Paper.Left + EndWidth, Paper.Right - EndWidth);
        foreach (var stroke in WirePaint.Along([(start, top + Line), (end, top + Line)], way.Conductor.Colour, 1.6))
            yield return stroke;
        var legs = Legs().ToList();
        var step = (end - start) / Math.Max(1, legs.Count);
        for (var index = 0; index <= legs.Count; index++)
            yield return Shape.Line(start + (index * step), top + Line - 2.5, start + (index * step), top + Line + 2.5, Shape.Ink, 0.3);
        for (var index = 0; index < legs.Count; index++)
        {
            var middle = start + ((index + 0.5) * step);
            yield return Shape.Text(legs[index].Name, middle, top + Line - 3, Centred, step - 1);
            yield return Shape.Text(legs[index].Length, middle, top + Line + 5, Centred, step - 1);
        }

        foreach (var element in End(way.Conductor.From, Paper.Left).Concat(End(way.Conductor.To, end)))
            yield return element;
        yield return Shape.Text(Total(), Paper.Width / 2, top + Line + 12, Centred, Paper.Right - Paper.Left);
    }

    // Stretches of a known way; of one that is not known, the routes that the file names.
    private IEnumerable<(string Name, string Length)> Legs() => way.Missing is null
        ? way.Legs.Select(leg => (leg.Route ?? (leg.Surface.Length > 0 ? "free" : "to the part"), Millimetres(leg.LengthMm)))
        : way.Conductor.Route.Count > 0 ? way.Conductor.Route.Select(route => (route, "")) : [("free", "")];

    private string Total()
    {
        var cut = way.Conductor.LengthIsComputed && way.Missing is null ? way.CutMm : way.Conductor.Length.Millimeters;
        var known = way.Missing is null ? $"way {Millimetres(way.WayMm)} and slack {Millimetres(way.SlackMm)}; " : "";
        return cut > 0
            ? $"{known}cut {Millimetres(cut)}{(way.Conductor.LengthIsComputed ? "" : ", as the machine file says")}{(IsShort(cut) ? "; that is shorter than the way: measure before you cut" : "")}"
            : $"length not known: {way.Missing}";
    }

    private bool IsShort(double cutMm) => way.Missing is null && cutMm < way.WayMm;

    private IEnumerable<XElement> End(TerminalReference end, double left)
    {
        var box = Shape.Box(left, top + 3, EndWidth, 20, 1, Shape.Ink, Shape.Ink, 0.4);
        box.SetAttributeValue("fill-opacity", "0.06");
        yield return box;
        var part = layout.Design.FindPart(end.Part)!;
        var connector = part.Type.ConnectorOf(end.Terminal) is { } found ? $"connector {found.Name}" : "";
        yield return Shape.Text(end.ToString(), left + 2, top + 8, Head, EndWidth - 4);
        foreach (var (words, at) in new[] { part.Name, connector, part.Place }.Where(words => words.Length > 0).Select((words, at) => (words, at)))
            yield return Shape.Text(words, left + 2, top + 12.5 + (at * 3.8), Paper.Small, EndWidth - 4);
    }

    private static string Millimetres(double length) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(Math.Round(length, 3)):0} mm");
}
