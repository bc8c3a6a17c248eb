using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>The blocks of one sheet in layers from left to right, so that every wire runs from a layer to the next.</summary>
internal sealed class SheetGraph
{
    private readonly Dictionary<(string, string), Block> _blocks = [];
    private readonly List<(WireEnd From, WireEnd To)> _wires = [];

    public SheetGraph(MachineDesign design, IEnumerable<Conductor> conductors)
    {
        foreach (var conductor in conductors)
        {
            var (from, to) = (EndOf(design, conductor, conductor.From), EndOf(design, conductor, conductor.To));
            (from.Far, to.Far) = (to, from);
            _wires.Add((from, to));
        }

        Blocks = [.. _blocks.Values];
        Layer();
        foreach (var (from, to) in _wires.Where(wire => Math.Abs(wire.From.Block.Layer - wire.To.Block.Layer) > 1))
            Pass(from.IsRight ? from : to);
        foreach (var block in Blocks)
            block.Items = BlockItems.Of(block);
        Layers = [.. Blocks.GroupBy(block => block.Layer).OrderBy(group => group.Key).Select(group => group.ToList())];
    }

    public List<Block> Blocks { get; }

    public IReadOnlyList<List<Block>> Layers { get; }

    private WireEnd EndOf(MachineDesign design, Conductor conductor, TerminalReference reference)
    {
        var part = design.FindPart(reference.Part)!;
        var isCoil = PartElements.CoilOf(part) is { } coil && (coil.A == reference.Terminal || coil.B == reference.Terminal);
        var key = (part.Designation, isCoil ? Block.Coil : "");
        if (!_blocks.TryGetValue(key, out var block))
            _blocks[key] = block = new(part, key.Item2);
        var end = new WireEnd(block, conductor, reference.Terminal);
        block.Ends.Add(end);
        return end;
    }

    /// <summary>Longest path from what feeds to what is fed (Kahn's order); where wires run in a circle, the block that comes first in the file leads.</summary>
    private void Layer()
    {
        var open = Blocks.ToList();
        var done = new HashSet<Block>();
        while (open.Count > 0)
        {
            var next = open.Find(block => Feeds(block).All(done.Contains)) ?? open[0];
            next.Layer = Feeds(next).Where(done.Contains).Select(feed => feed.Layer + 1).Concat(FedBack(next, done)).DefaultIfEmpty(0).Max();
            done.Add(next);
            open.Remove(next);
        }

        // What nothing feeds moves next to what it feeds.
        foreach (var block in Blocks.Where(block => !Feeds(block).Any() && Fed(block).Any()))
            block.Layer = Math.Max(0, Fed(block).Min(fed => fed.Layer) - 1);
        var least = Blocks.Min(block => block.Layer);
        foreach (var block in Blocks)
            block.Layer -= least;
    }

    private static IEnumerable<Block> Feeds(Block block) => block.Ends.Where(end => !end.IsSource && end.Far.Block != block).Select(end => end.Far.Block);

    private static IEnumerable<Block> Fed(Block block) => block.Ends.Where(end => end.IsSource && end.Far.Block != block).Select(end => end.Far.Block);

    // No block may share a layer with one that it is wired to.
    private static IEnumerable<int> FedBack(Block block, HashSet<Block> done) => Fed(block).Where(done.Contains).Select(fed => fed.Layer + 1);

    /// <summary>Leads a wire through the layers between its ends.</summary>
    private void Pass(WireEnd left)
    {
        var right = left.Far;
        var here = left;
        for (var layer = left.Block.Layer + 1; layer < right.Block.Layer; layer++)
        {
            var passage = new Block(null, "") { Layer = layer };
            var (into, outOf) = (new WireEnd(passage, left.Wire, ""), new WireEnd(passage, left.Wire, ""));
            passage.Ends.AddRange([into, outOf]);
            (here.Far, into.Far) = (into, here);
            here = outOf;
            Blocks.Add(passage);
        }

        (here.Far, right.Far) = (right, here);
    }
}
