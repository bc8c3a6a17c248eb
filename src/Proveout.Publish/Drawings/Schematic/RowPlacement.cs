namespace Proveout.Publish.Drawings;

/// <summary>Orders the blocks of each layer and gives them rows, so that wires run straight and cross little: barycentres, then least squares in order.</summary>
internal static class RowPlacement
{
    private const int Sweeps = 6;

    public static void Place(SheetGraph graph)
    {
        foreach (var layer in graph.Layers)
            Stack(layer);
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            foreach (var layer in sweep % 2 == 0 ? graph.Layers : graph.Layers.Reverse())
            {
                Order(layer);
                foreach (var block in layer)
                    OrderItems(block);
                Settle(layer);
            }
        }

        for (var sweep = 0; sweep < 4; sweep++)
            foreach (var layer in sweep % 2 == 0 ? graph.Layers.Reverse() : graph.Layers)
                Settle(layer);
        var least = graph.Blocks.Min(block => block.Top);
        foreach (var block in graph.Blocks)
            block.Top -= least;
    }

    private static void Stack(List<Block> layer)
    {
        var row = 0;
        foreach (var block in layer)
        {
            block.Settle();
            block.Top = row;
            row += block.AllRows;
        }
    }

    private static void Order(List<Block> layer)
    {
        var ordered = layer.OrderBy(block => block.Ends.Average(end => end.Far.SheetRow - end.Row)).ToList();
        layer.Clear();
        layer.AddRange(ordered);
    }

    // Connectors of a board and clamps of a bar may change places on paper; poles of a switch stay in order.
    private static void OrderItems(Block block)
    {
        if (block.Items.Any(item => item.Form != ItemForm.Ports))
            return;
        block.Items = [.. block.Items.OrderBy(item => item.Ends.Average(end => end.Far.SheetRow))];
        block.Settle();
    }

    /// <summary>Moves each block as near as possible to where its wires are straight, without changing the order: pooling of adjacent violators.</summary>
    private static void Settle(List<Block> layer)
    {
        var pools = new List<(double Sum, double Weight, int Count)>();
        var before = 0;
        foreach (var block in layer)
        {
            var weight = block.Ends.Count;
            pools.Add(((Wanted(block) - before) * weight, weight, 1));
            before += block.AllRows;
            while (pools.Count > 1 && pools[^2].Sum / pools[^2].Weight >= pools[^1].Sum / pools[^1].Weight)
            {
                var (last, other) = (pools[^1], pools[^2]);
                pools.RemoveRange(pools.Count - 2, 2);
                pools.Add((last.Sum + other.Sum, last.Weight + other.Weight, last.Count + other.Count));
            }
        }

        var (index, row) = (0, 0);
        foreach (var pool in pools)
        {
            var shift = (int)Math.Round(pool.Sum / pool.Weight, MidpointRounding.AwayFromZero);
            for (var each = 0; each < pool.Count; each++, index++)
            {
                layer[index].Top = shift + row;
                row += layer[index].AllRows;
            }
        }
    }

    private static double Wanted(Block block)
    {
        var tops = block.Ends.Select(end => (double)(end.Far.SheetRow - block.HeadRows - end.Row)).Order().ToList();
        return tops[tops.Count / 2];
    }
}
