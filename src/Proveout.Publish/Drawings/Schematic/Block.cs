using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>What one part, or its coil, or its contacts, is on a sheet; without a part it is a place where a wire runs past.</summary>
internal sealed class Block(Part? part, string aspect)
{
    /// <summary>Aspect of a part that is its coil alone.</summary>
    public const string Coil = "coil";

    public Part? Part { get; } = part;

    /// <summary>Which side of the part: all of it, or its coil.</summary>
    public string Aspect { get; } = aspect;

    public List<WireEnd> Ends { get; } = [];

    /// <summary>What it is drawn from, top to bottom.</summary>
    public IReadOnlyList<BlockItem> Items { get; set; } = [];

    public int Layer { get; set; }

    /// <summary>First row of the sheet that it takes.</summary>
    public int Top { get; set; }

    /// <summary>Rows of its heading.</summary>
    public int HeadRows { get; set; }

    public IReadOnlyList<string> Heading { get; set; } = [];

    public bool IsPassage => Part is null;

    public int BodyRows => Math.Max(1, Items.Sum(item => item.Rows));

    /// <summary>Rows with heading and the gap below it.</summary>
    public int AllRows => IsPassage ? 1 : HeadRows + BodyRows + 1;

    /// <summary>Gives every end its row, in the order of the items.</summary>
    public void Settle()
    {
        var row = 0;
        foreach (var item in Items)
        {
            item.Settle(row);
            row += item.Rows;
        }
    }
}
