using System.Globalization;
using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Draws the blocks of a part's page in a column.</summary>
internal sealed class PartPainter(MachineDesign design, double left)
{
    public const double Width = 134;
    private const double NameWidth = 27;
    private const double WireStart = 33;
    private const double WireEnd = 47;
    private const double MarkWidth = 40;
    private static readonly TextStyle Head = new(2.8, Bold: true);
    private static readonly TextStyle Name = new(Paper.SmallSize, "end");
    private static readonly TextStyle Centred = new(Paper.SmallSize, "middle");

    public IEnumerable<XElement> Draw(PartBlock block, double top)
    {
        yield return Shape.Text(block.Heading, left, top + 4, Head, Width);
        var content = block.Jumper is { } jumper ? DrawJumper(jumper, block.Position, top + PartBlock.HeadHeight) : Rows(block, top + PartBlock.HeadHeight);
        foreach (var element in content)
            yield return element;
    }

    private IEnumerable<XElement> Rows(PartBlock block, double top)
    {
        var shell = Shape.Box(left, top, WireStart, block.Rows.Count * PartBlock.RowHeight, 0.8, Shape.Ink, Shape.Ink, 0.35);
        shell.SetAttributeValue("fill-opacity", "0.05");
        yield return shell;
        for (var index = 0; index < block.Rows.Count; index++)
        {
            var (row, y) = (block.Rows[index], top + ((index + 0.5) * PartBlock.RowHeight));
            if (index == 0 || block.Rows[index - 1].Terminal != row.Terminal)
                yield return Shape.Text(row.Terminal, left + NameWidth, y + 0.9, Name, NameWidth - 1);
            yield return Shape.Circle(left + NameWidth + 2.6, y, 1.1, Paper.Ground, Shape.Ink, 0.3);
            foreach (var element in row.Conductor is { } conductor ? Landing(conductor, row.Other!.Value, y) : [Shape.Text("free", left + WireStart + 2, y + 0.9, Paper.Small, 30)])
                yield return element;
        }
    }

    private IEnumerable<XElement> Landing(Conductor conductor, TerminalReference other, double y)
    {
        foreach (var stroke in WirePaint.Along([(left + NameWidth + 3.8, y), (left + WireEnd, y)], conductor.Colour, 1.1))
            yield return stroke;
        var mark = string.Create(
            CultureInfo.InvariantCulture,
            $"{conductor.Id} {ColourWords.Of(conductor.Colour)} {WirePaint.Code(conductor.Colour)} {conductor.CrossSection.SquareMillimeters:0.##}");
        yield return Shape.Text(mark, left + WireEnd + 1.5, y + 0.9, Paper.Small, MarkWidth);
        yield return Shape.Text($"to {other}, {design.FindPart(other.Part)!.Name}", left + WireEnd + MarkWidth + 3, y + 0.9, Paper.Small, Width - WireEnd - MarkWidth - 3);
    }

    /// <summary>A pair of posts for each position; the bridge covers the pair that it is fitted on.</summary>
    private static IEnumerable<XElement> Posts(double x, double top, bool isFitted)
    {
        yield return Shape.Box(x - 1, top + 2, 2, 2, 0.2, isFitted ? Shape.Ink : "none", Shape.Ink, 0.3);
        yield return Shape.Box(x - 1, top + 7, 2, 2, 0.2, isFitted ? Shape.Ink : "none", Shape.Ink, 0.3);
        if (!isFitted)
            yield break;
        var bridge = Shape.Box(x - 2, top + 1, 4, 9, 1, Shape.Ink, Shape.Ink, 0.5);
        bridge.SetAttributeValue("fill-opacity", "0.35");
        yield return bridge;
    }

    private IEnumerable<XElement> DrawJumper(Jumper jumper, string? position, double top)
    {
        var step = Math.Max(12, jumper.Positions.Max(each => Centred.Width(each.Name)) + 4);
        var width = Math.Min(Width, (jumper.Positions.Count * step) + 4);
        yield return Shape.Box(left, top, width, 11, 0.8, "none", Shape.Ink, 0.3);
        for (var index = 0; index < jumper.Positions.Count; index++)
        {
            var x = left + 2 + ((index + 0.5) * step);
            var isFitted = jumper.Positions[index].Name == position;
            foreach (var element in Posts(x, top, isFitted))
                yield return element;
            yield return Shape.Text(jumper.Positions[index].Name, x, top + 14.5, isFitted ? Centred with { Bold = true } : Centred, step);
        }

        yield return Shape.Text($"lower posts: {jumper.Common}; upper: {string.Join(", ", jumper.Positions.Select(each => each.Post))}", left, top + 18.2, Paper.Small, Width);
    }
}
