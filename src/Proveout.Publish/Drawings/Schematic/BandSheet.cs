namespace Proveout.Publish.Drawings;

/// <summary>A sheet of a schematic.</summary>
/// <param name="Function">What its conductors serve.</param>
/// <param name="Shelves">Its bands, shelf by shelf, each by its place among all bands.</param>
internal sealed record BandSheet(WireFunction Function, IReadOnlyList<IReadOnlyList<int>> Shelves)
{
    // Air between bands, so that they read as separate.
    private const double Gap = 9;

    public IEnumerable<int> Bands => Shelves.SelectMany(shelf => shelf);

    /// <summary>Puts bands side by side on shelves while there is room (next-fit), and begins a sheet with each function.</summary>
    public static IReadOnlyList<BandSheet> Pack(IReadOnlyList<Band> bands, IReadOnlyList<SheetLayout> layouts)
    {
        var sheets = new List<(WireFunction Function, List<List<int>> Shelves)>();
        for (var band = 0; band < bands.Count; band++)
        {
            if (sheets.Count == 0 || sheets[^1].Function != bands[band].Function || !Add(sheets[^1].Shelves, band))
                sheets.Add((bands[band].Function, [[band]]));
        }

        return [.. sheets.Select(sheet => new BandSheet(sheet.Function, sheet.Shelves))];

        bool Add(List<List<int>> shelves, int band)
        {
            var above = shelves.SkipLast(1).Sum(shelf => HeightOf(shelf, layouts) + Gap);
            var (last, height) = (shelves[^1], layouts[band].Height);
            if (last.Sum(each => layouts[each].Width + Gap) + layouts[band].Width <= Paper.Right - Paper.Left && above + height <= Paper.Bottom - Paper.Top)
                last.Add(band);
            else if (above + HeightOf(last, layouts) + Gap + height <= Paper.Bottom - Paper.Top)
                shelves.Add([band]);
            else
                return false;
            return true;
        }
    }

    /// <summary>Gives the layouts of its bands their places: in the middle across, and down with what is left shared out.</summary>
    public void Arrange(IReadOnlyList<SheetLayout> layouts)
    {
        var free = Paper.Bottom - Paper.Top - Shelves.Sum(shelf => HeightOf(shelf, layouts));
        var gap = Math.Clamp(free / (Shelves.Count + 1), 0, 14);
        var y = Paper.Top + gap;
        foreach (var shelf in Shelves)
        {
            var left = Math.Max(0, Paper.Right - Paper.Left - shelf.Sum(band => layouts[band].Width)) / (shelf.Count + 1);
            var x = Paper.Left;
            foreach (var band in shelf)
            {
                (layouts[band].OffsetX, layouts[band].OffsetY) = (x + left, y);
                x += left + layouts[band].Width;
            }

            y += HeightOf(shelf, layouts) + gap;
        }
    }

    private static double HeightOf(IEnumerable<int> shelf, IReadOnlyList<SheetLayout> layouts) => shelf.Max(band => layouts[band].Height);
}
