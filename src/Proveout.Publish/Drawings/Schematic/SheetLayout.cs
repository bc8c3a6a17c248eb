using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Where everything of a sheet is, in millimetres: columns of blocks, between them a zone of wire marks and the tracks of a channel.</summary>
internal sealed class SheetLayout
{
    public const double Pitch = 4.4;
    private const double TrackStep = 1.7;
    private const double Margin = 1.5;
    private const double LeastColumn = 21;
    private const double MostHeading = 34;

    private readonly List<double> _lefts = [];
    private readonly List<double> _widths = [];
    private readonly List<double> _markZones = [];

    /// <summary>Lays out conductors; references go into the headings of parts that are also drawn elsewhere.</summary>
    /// <param name="design">The machine.</param>
    /// <param name="conductors">What is on the sheet.</param>
    /// <param name="references">Where else a block's part is drawn, as words.</param>
    public SheetLayout(MachineDesign design, IReadOnlyList<Conductor> conductors, Func<Block, string> references)
    {
        Graph = new(design, conductors);
        foreach (var layer in Graph.Layers)
            _widths.Add(layer.Max(block => Math.Max(LeastColumn, WidthOf(block))));
        foreach (var block in Graph.Blocks.Where(block => !block.IsPassage))
            Head(block, references(block), _widths[block.Layer]);
        RowPlacement.Place(Graph);
        Channels = [.. Graph.Layers.SkipLast(1).Select(layer => new Channel(layer))];
        var x = 0.0;
        for (var layer = 0; layer < Graph.Layers.Count; layer++)
        {
            _lefts.Add(x);
            x += _widths[layer];
            if (layer == Channels.Count)
                break;
            _markZones.Add(Channels[layer].Runs.Where(IsMarked).Select(run => Paper.Small.Width(WirePaint.Mark(run.Left.Wire)) + 2).DefaultIfEmpty(2).Max());
            x += _markZones[layer] + (Channels[layer].Tracks * TrackStep) + Margin;
        }

        (Width, Height) = (x, Graph.Blocks.Max(block => block.Top + block.AllRows) * Pitch);
    }

    public SheetGraph Graph { get; }

    public IReadOnlyList<Channel> Channels { get; }

    public double Width { get; }

    public double Height { get; }

    /// <summary>Left edge on its sheet.</summary>
    public double OffsetX { get; set; } = Paper.Left;

    /// <summary>Upper edge on its sheet.</summary>
    public double OffsetY { get; set; } = Paper.Top;

    public bool Fits => Width <= Paper.Right - Paper.Left && Height <= Paper.Bottom - Paper.Top;

    public double LeftOf(Block block) => OffsetX + _lefts[block.Layer];

    public double RightOf(Block block) => LeftOf(block) + _widths[block.Layer];

    /// <summary>Height of a wire in a row.</summary>
    public double Y(double row) => OffsetY + ((row + 0.7) * Pitch);

    /// <summary>A wire's mark is written once, where it leaves its left block.</summary>
    public static bool IsMarked(Run run) => !run.Left.Block.IsPassage;

    /// <summary>Corners of a wire between two layers.</summary>
    public IReadOnlyList<(double X, double Y)> Corners(Run run, int layer)
    {
        var (start, end) = ((RightOf(run.Left.Block), Y(run.From)), (LeftOf(run.Right.Block), Y(run.To)));
        if (run.Track is not { } track)
            return [start, end];
        var x = TrackAt(layer, track);
        if (run.SecondTrack is not { } second)
            return [start, (x, Y(run.From)), (x, Y(run.To)), end];
        var (beside, middle) = (TrackAt(layer, second), Y(run.From + 0.5));
        return [start, (x, Y(run.From)), (x, middle), (beside, middle), (beside, Y(run.To)), end];
    }

    private double TrackAt(int layer, int track) => OffsetX + _lefts[layer] + _widths[layer] + _markZones[layer] + (track * TrackStep);

    private static double WidthOf(Block block) => block.IsPassage ? 0 : Math.Max(
        BlockPainter.WidthOf(block),
        Math.Min(MostHeading, TextBlock.Lines(block.Part!.Name, Paper.Small, MostHeading).Select(Paper.Small.Width).DefaultIfEmpty(0).Max()));

    private static void Head(Block block, string references, double width)
    {
        block.Heading = [.. TextBlock.Lines(block.Part!.Name, Paper.Small, width), .. TextBlock.Lines(references, Paper.Small, width)];
        block.HeadRows = (int)Math.Ceiling((BlockPainter.HeadHeight(block) + 1) / Pitch);
    }
}
