using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>An end of a wire on a sheet: where it meets a block.</summary>
internal sealed class WireEnd(Block block, Conductor wire, string terminal)
{
    public Block Block { get; } = block;

    public Conductor Wire { get; } = wire;

    public string Terminal { get; } = terminal;

    /// <summary>True at the end that the machine file names first.</summary>
    public bool IsSource => Wire.From == new TerminalReference(Block.Part!.Designation, Terminal);

    /// <summary>The end at the other side of the sheet's wire.</summary>
    public WireEnd Far { get; set; } = null!;

    /// <summary>True when the wire leaves its block to the right.</summary>
    public bool IsRight => Far.Block.Layer > Block.Layer;

    /// <summary>Row below the block's heading.</summary>
    public int Row { get; set; }

    /// <summary>Row of the sheet.</summary>
    public int SheetRow => Block.Top + Block.HeadRows + Row;
}
