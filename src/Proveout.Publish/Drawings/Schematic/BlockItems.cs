using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Composes a block from elements and terminals, once it is known which of its wires go left and which right.</summary>
internal sealed class BlockItems
{
    private readonly Part _part;
    private readonly List<WireEnd> _ends;
    private readonly HashSet<string> _drawn = new(StringComparer.Ordinal);

    private BlockItems(Block block)
    {
        _part = block.Part!;
        var order = _part.Type.Terminals.Select((terminal, index) => (terminal.Name, index)).ToDictionary(pair => pair.Name, pair => pair.index);
        _ends = [.. block.Ends.OrderBy(end => order[end.Terminal])];
    }

    /// <summary>The items of a block, in the order of its terminals.</summary>
    public static IReadOnlyList<BlockItem> Of(Block block)
    {
        if (block.IsPassage)
            return [new(ItemForm.Lane, Symbol.None, "", [block.Ends[0]], [block.Ends[1]])];
        var items = new BlockItems(block);
        return [.. items.Motor(), .. items.Elements(), .. items.Ports()];
    }

    private IEnumerable<BlockItem> Motor()
    {
        var windings = _ends.Where(end => RoleOf(end.Terminal) == TerminalRole.Winding).ToList();
        if (windings.Count == 0 || _part.Type.ClassLetter != "M" || windings.Select(end => end.IsRight).Distinct().Count() > 1)
            yield break;
        _drawn.UnionWith(windings.Select(end => end.Terminal));
        yield return windings[0].IsRight ? new(ItemForm.Motor, Symbol.None, "", [], windings) : new(ItemForm.Motor, Symbol.None, "", windings, []);
    }

    private IEnumerable<BlockItem> Elements()
    {
        var elements = PartElements.Of(_part).Where(element => At(element.A).Count > 0 || At(element.B).Count > 0).ToList();
        // With the far end of one element on this sheet, a neighbour that leads nowhere here is left out.
        elements.RemoveAll(element => (At(element.A).Count == 0 || At(element.B).Count == 0) && elements.Exists(other =>
            other != element && At(other.A).Count > 0 && At(other.B).Count > 0 && (other.A == element.A || other.A == element.B || other.B == element.A || other.B == element.B)));
        string? shared = null;
        foreach (var element in elements)
            if (ItemOf(element, shared) is { } item)
            {
                shared = item.Terminals.First;
                _drawn.UnionWith([element.A, element.B]);
                yield return item;
            }
    }

    private BlockItem? ItemOf(PartElement element, string? shared)
    {
        var (a, b) = (element.A, element.B);
        if (IsTorn(a) || IsTorn(b) || _drawn.Contains(b) || (_drawn.Contains(a) && a != shared))
            return null;
        var isShared = a == shared;
        var (aRight, bRight) = (Side(a) ?? !Side(b)!.Value, Side(b) ?? !Side(a)!.Value);
        var aEnds = isShared ? [] : At(a);
        var form = aRight != bRight ? ItemForm.Lane : aRight ? ItemForm.Right : ItemForm.Left;
        if (isShared && (form != ItemForm.Lane || aRight))
            return null;
        return aRight && !bRight
            ? new(form, element.Symbol, element.Value, At(b), aEnds) { Terminals = (b, a) }
            : new(form, element.Symbol, element.Value, aEnds, At(b)) { Terminals = (a, b), SharesFirst = isShared };
    }

    private IEnumerable<BlockItem> Ports()
    {
        var isBoard = _part.Type.ClassLetter is not "X";
        return _ends.Where(end => !_drawn.Contains(end.Terminal))
            .GroupBy(end => isBoard ? _part.Type.ConnectorOf(end.Terminal)?.Name ?? "" : " " + end.Terminal)
            .Select(group => new BlockItem(
                ItemForm.Ports,
                group.All(end => RoleOf(end.Terminal) == TerminalRole.ProtectiveEarth) && _part.Type.ClassLetter != "X" ? Symbol.Earth : Symbol.None,
                isBoard ? group.Key : "",
                [.. group.Where(end => !end.IsRight)],
                [.. group.Where(end => end.IsRight)]));
    }

    private List<WireEnd> At(string terminal) => _ends.FindAll(end => end.Terminal == terminal);

    // An element cannot be drawn at a terminal whose wires leave to both sides; the terminals of a box can.
    private bool IsTorn(string terminal) => At(terminal).Select(end => end.IsRight).Distinct().Count() > 1;

    private bool? Side(string terminal) => At(terminal) is [var end, ..] ? end.IsRight : null;

    private TerminalRole? RoleOf(string terminal) => _part.Type.FindTerminal(terminal)?.Role;
}
