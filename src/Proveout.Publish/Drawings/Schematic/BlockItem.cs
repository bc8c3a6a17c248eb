namespace Proveout.Publish.Drawings;

/// <summary>A strip of a block: terminals beside each other, or an element between two of them.</summary>
/// <param name="form">How it is drawn.</param>
/// <param name="symbol">The element's symbol.</param>
/// <param name="name">Name of the connector, or a value.</param>
/// <param name="first">Ends at its first terminal (all ends at the left side, where it is no element).</param>
/// <param name="second">Ends at its second terminal (all ends at the right side, where it is no element).</param>
internal sealed class BlockItem(ItemForm form, Symbol symbol, string name, IReadOnlyList<WireEnd> first, IReadOnlyList<WireEnd> second)
{
    public ItemForm Form { get; } = form;

    public Symbol Symbol { get; } = symbol;

    public string Name { get; } = name;

    public IReadOnlyList<WireEnd> First { get; } = first;

    public IReadOnlyList<WireEnd> Second { get; } = second;

    /// <summary>Names of both terminals of an element.</summary>
    public (string First, string Second) Terminals { get; init; } = ("", "");

    /// <summary>True when its first terminal is that of the item above.</summary>
    public bool SharesFirst { get; init; }

    /// <summary>First row in its block.</summary>
    public int Row { get; private set; }

    // Both ends of an upright element are two rows apart, so that the symbol has room.
    public int Rows => Form switch
    {
        ItemForm.Ports or ItemForm.Motor => Math.Max(1, Math.Max(First.Count, Second.Count)),
        ItemForm.Lane => Math.Max(1, Math.Max(First.Count, Second.Count)),
        _ => Math.Max(1, First.Count) + 1 + Math.Max(1, Second.Count),
    };

    /// <summary>Row of the second terminal of an upright element.</summary>
    public int SecondRow => Row + Math.Max(1, First.Count) + 1;

    public IEnumerable<WireEnd> Ends => First.Concat(Second);

    public void Settle(int row)
    {
        Row = row;
        for (var index = 0; index < First.Count; index++)
            First[index].Row = row + index;
        var start = Form is ItemForm.Left or ItemForm.Right ? SecondRow : row;
        for (var index = 0; index < Second.Count; index++)
            Second[index].Row = start + index;
    }
}
