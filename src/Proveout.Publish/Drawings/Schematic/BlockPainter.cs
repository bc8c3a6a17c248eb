using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws one block: heading, then boxes with terminals, or symbols on their wires.</summary>
internal sealed class BlockPainter(SheetLayout layout, Block block)
{
    private const double LineWidth = 0.3;
    private static readonly TextStyle Designation = new(3.2, Bold: true);
    private static readonly TextStyle FromRight = new(Paper.SmallSize, "end");
    private static readonly TextStyle Centred = new(Paper.SmallSize, "middle");
    private readonly double _left = layout.LeftOf(block);
    private readonly double _right = layout.RightOf(block);
    private readonly double _body = layout.Y(block.Top + block.HeadRows) - (SheetLayout.Pitch * 0.72);

    /// <summary>Height of designation and further lines of the heading.</summary>
    public static double HeadHeight(Block block) => 3.4 + (block.Heading.Count * 3);

    /// <summary>Least width of a block's body.</summary>
    public static double WidthOf(Block block) => block.Items.Select(WidthOf).DefaultIfEmpty(0).Max();

    public IEnumerable<XElement> Draw() => block.IsPassage ? [Passage()] : [.. Heading(), .. Box(), .. block.Items.SelectMany(Draw), .. Links()];

    private XElement Passage()
    {
        var wire = Shape.Path(WirePaint.Data([(_left, Row(0)), (_right, Row(0))]), "none", Shape.Ink, LineWidth);
        wire.SetAttributeValue("data-conductor", block.Ends[0].Wire.Id);
        return wire;
    }

    private static double WidthOf(BlockItem item)
    {
        double Names(IEnumerable<WireEnd> ends) => ends.Select(end => Paper.Small.Width(end.Terminal)).DefaultIfEmpty(0).Max();
        var connector = item.Name.Length == 0 ? 0 : Paper.Small.Width(item.Name) + 2;
        return item.Form switch
        {
            ItemForm.Ports => Names(item.First) + Names(item.Second) + connector + 7,
            ItemForm.Motor => Names(item.Ends) + 18,
            ItemForm.Lane => Paper.Small.Width(item.Terminals.First) + Paper.Small.Width(item.Terminals.Second) + SymbolPath.Length + connector + 5,
            _ => Math.Max(Paper.Small.Width(item.Terminals.First), Paper.Small.Width(item.Terminals.Second)) + connector + 9,
        };
    }

    private double Row(double row) => layout.Y(block.Top + block.HeadRows + row);

    private static XElement Line(double x1, double y1, double x2, double y2) => Shape.Line(x1, y1, x2, y2, Shape.Ink, LineWidth);

    private IEnumerable<XElement> Heading()
    {
        var y = _body - 1.2 - (3 * block.Heading.Count);
        yield return Shape.Text(block.Part!.Designation, _left, y, Designation, _right - _left);
        if (HeadingMark.Of(block.Part.Type) is { Length: > 0 } mark)
            yield return Placed(mark, _left + Designation.Width(block.Part.Designation) + 2, y - 3.7, 0);
        foreach (var line in block.Heading)
            yield return Shape.Text(line, _left, y += 3, Paper.Small, _right - _left);
    }

    /// <summary>An outline round the terminals that belong to no symbol, with a line between connectors.</summary>
    private IEnumerable<XElement> Box()
    {
        var boxed = block.Items.Where(item => item.Form == ItemForm.Ports && item.Symbol != Symbol.Earth).ToList();
        if (boxed.Count == 0)
            yield break;
        var top = Row(boxed[0].Row) - (SheetLayout.Pitch / 2);
        var height = boxed.Sum(item => item.Rows) * SheetLayout.Pitch;
        var box = Shape.Box(_left, top, _right - _left, height, 0.6, Shape.Ink, Shape.Ink, LineWidth);
        box.SetAttributeValue("fill-opacity", "0.06");
        yield return box;
        foreach (var item in boxed.Skip(1).Where(item => item.Name.Length > 0))
            yield return Shape.Line(_left, Row(item.Row) - (SheetLayout.Pitch / 2), _right, Row(item.Row) - (SheetLayout.Pitch / 2), Shape.Ink, 0.15);
    }

    private IEnumerable<XElement> Draw(BlockItem item) => item.Form switch
    {
        ItemForm.Ports => item.Symbol == Symbol.Earth ? Earth(item) : Ports(item),
        ItemForm.Lane => Lane(item),
        ItemForm.Motor => Motor(item),
        _ => Upright(item),
    };

    private IEnumerable<XElement> Ports(BlockItem item)
    {
        foreach (var end in item.Ends)
        {
            var edge = end.IsRight ? _right : _left;
            yield return Shape.Circle(edge, Row(end.Row), 0.7, Paper.Ground, Shape.Ink, LineWidth);
            yield return Shape.Text(end.Terminal, edge + (end.IsRight ? -1.6 : 1.6), Row(end.Row) + 0.85, end.IsRight ? FromRight : Paper.Small, _right - _left);
            if (IsSwitched(end.Terminal))
                yield return Transistor(edge, Row(end.Row), end);
        }

        if (item.Name.Length > 0)
            yield return Shape.Text(item.Name, MiddleOf(item), Row(item.Row) + 0.85, Centred, _right - _left);
    }

    // The name of a connector stands between the names of its terminals, or at the free side.
    private double MiddleOf(BlockItem item)
    {
        double Names(IEnumerable<WireEnd> ends) => ends.Select(end => Paper.Small.Width(end.Terminal) + 2).DefaultIfEmpty(0).Max();
        return (_left + Names(item.First) + _right - Names(item.Second)) / 2;
    }

    private bool IsSwitched(string terminal) => block.Part!.Type.ClassLetter == "A"
        && block.Part.Type.Circuit.OfType<Engine.Machine.SwitchedPath>().Any(path => path.Command.Length > 0 && path.A == terminal);

    /// <summary>An arrow out of the box: an electronic switch behind this terminal, which the board commands.</summary>
    private static XElement Transistor(double edge, double y, WireEnd end)
    {
        var sign = end.IsRight ? 1 : -1;
        var data = FormattableString.Invariant($"M{edge + (sign * 1):0.##} {y - 0.8:0.##}V{y + 0.8:0.##}L{edge + (sign * 2.2):0.##} {y:0.##}Z");
        return Shape.Path(data, Shape.Ink, Shape.Ink, 0.1);
    }

    private IEnumerable<XElement> Earth(BlockItem item)
    {
        foreach (var end in item.Ends)
        {
            var y = Row(end.Row);
            var x = end.IsRight ? _right : _left;
            var name = Paper.Small.Width(end.Terminal) + 2;
            yield return Line(x, y, end.IsRight ? x - name : x + name, y);
            yield return Placed(SymbolPath.Earth, end.IsRight ? x - name : x + name, y, end.IsRight ? 180 : 0);
            yield return Shape.Text(end.Terminal, end.IsRight ? x - 1 : x + 1, y - 0.7, end.IsRight ? FromRight : Paper.Small, name);
        }
    }

    // In the middle of what the names of terminals and the value leave free.
    private double SymbolStart(BlockItem item)
    {
        var value = item.Name.Length == 0 ? 0 : Paper.Small.Width(item.Name) + 1;
        var taken = Paper.Small.Width(item.Terminals.First) + Paper.Small.Width(item.Terminals.Second) + value + SymbolPath.Length;
        return _left + Paper.Small.Width(item.Terminals.First) + ((_right - _left - taken) / 2);
    }

    private IEnumerable<XElement> Lane(BlockItem item)
    {
        var y = Row(item.Row);
        var start = SymbolStart(item);
        var bus = _left + 1.5 + Paper.Small.Width(item.Terminals.First);
        yield return Line(item.SharesFirst ? bus : _left, y, start, y);
        yield return Line(start + SymbolPath.Length, y, _right, y);
        if (item.SharesFirst)
            yield return Line(bus, y, bus, Row(item.Row - 1));
        foreach (var part in Symbols(item.Symbol, start, y, 0))
            yield return part;
        if (!item.SharesFirst)
            yield return Shape.Text(item.Terminals.First, _left + 0.6, y - 0.7, Paper.Small, 30);
        yield return Shape.Text(item.Terminals.Second, _right - 0.6, y - 0.7, FromRight, 30);
        if (item.Name.Length > 0)
            yield return Shape.Text(item.Name, start + SymbolPath.Length + 0.5, y - 0.7, Paper.Small, 30);
        foreach (var joint in item.First.Skip(1).Select(end => (X: _left, end.Row)).Concat(item.Second.Skip(1).Select(end => (X: _right, end.Row))))
            yield return Line(joint.X, Row(joint.Row), joint.X, y);
    }

    private IEnumerable<XElement> Upright(BlockItem item)
    {
        var isRight = item.Form == ItemForm.Right;
        var edge = isRight ? _right : _left;
        var names = Math.Max(Paper.Small.Width(item.Terminals.First), Paper.Small.Width(item.Terminals.Second)) + 2.5;
        var x = isRight ? edge - names - 2 : edge + names + 2;
        var (top, bottom) = (Row(item.Row), Row(item.SecondRow));
        yield return Line(edge, top, x, top);
        yield return Line(edge, bottom, x, bottom);
        var start = ((top + bottom) / 2) - (SymbolPath.Length / 2);
        yield return Line(x, top, x, start);
        yield return Line(x, start + SymbolPath.Length, x, bottom);
        foreach (var part in Symbols(item.Symbol, x, start, 90))
            yield return part;
        yield return Shape.Text(item.Terminals.First, isRight ? edge - 0.6 : edge + 0.6, top - 0.7, isRight ? FromRight : Paper.Small, 30);
        yield return Shape.Text(item.Terminals.Second, isRight ? edge - 0.6 : edge + 0.6, bottom - 0.7, isRight ? FromRight : Paper.Small, 30);
        if (item.Name.Length > 0)
            yield return Shape.Text(item.Name, isRight ? x - 3 : x + 3, ((top + bottom) / 2) + 0.85, isRight ? FromRight : Paper.Small, 30);
        foreach (var end in item.First.Skip(1))
            yield return Line(edge, Row(end.Row), edge, top);
        foreach (var end in item.Second.Skip(1))
            yield return Line(edge, Row(end.Row), edge, bottom);
    }

    private IEnumerable<XElement> Motor(BlockItem item)
    {
        var ends = item.Ends.ToList();
        var isRight = ends[0].IsRight;
        var edge = isRight ? _right : _left;
        var middle = (Row(ends[0].Row) + Row(ends[^1].Row)) / 2;
        var radius = Math.Max(4, (Row(ends[^1].Row) - middle) + 1);
        var names = ends.Max(end => Paper.Small.Width(end.Terminal)) + 2.5;
        var x = isRight ? edge - names - radius : edge + names + radius;
        yield return Shape.Circle(x, middle, radius, "none", Shape.Ink, LineWidth);
        yield return Shape.Text("M", x, middle + 1.3, new TextStyle(4, "middle", Bold: true), 8);
        foreach (var end in ends)
        {
            var y = Row(end.Row);
            var reach = Math.Sqrt(Math.Max(0, (radius * radius) - ((y - middle) * (y - middle))));
            yield return Line(edge, y, isRight ? x + reach : x - reach, y);
            yield return Shape.Text(end.Terminal, isRight ? edge - 0.6 : edge + 0.6, y - 0.7, isRight ? FromRight : Paper.Small, names);
        }
    }

    /// <summary>Contacts that move together are linked by a dashed line; over the first stands what moves them.</summary>
    private IEnumerable<XElement> Links()
    {
        var contacts = block.Items.Where(item => item is { Form: ItemForm.Lane, Symbol: Symbol.ClosingContact or Symbol.OpeningContact }).ToList();
        if (contacts.Count == 0)
            yield break;
        var x = SymbolStart(contacts[0]) + (SymbolPath.Length / 2);
        var link = Line(x, Row(contacts[0].Row) - 1, x, Row(contacts[^1].Row) - 1);
        link.SetAttributeValue("stroke-dasharray", "0.9 0.9");
        if (contacts.Count > 1)
            yield return link;
        foreach (var mark in ActuatorMark.Of(block.Part!, x, Row(contacts[0].Row)))
            yield return mark;
    }

    private static IEnumerable<XElement> Symbols(Symbol symbol, double x, double y, int turn)
    {
        var (lines, filled) = SymbolPath.Of(symbol);
        yield return Placed(lines, x, y, turn);
        if (filled.Length == 0)
            yield break;
        var fill = Placed(filled, x, y, turn);
        fill.SetAttributeValue("fill", Shape.Ink);
        yield return fill;
    }

    private static XElement Placed(string data, double x, double y, int turn)
    {
        var path = Shape.Path(data, "none", Shape.Ink, LineWidth);
        path.SetAttributeValue("transform", FormattableString.Invariant($"translate({x:0.##} {y:0.##}) rotate({turn})"));
        return path;
    }
}
