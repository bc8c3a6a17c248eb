namespace Proveout.Publish.Drawings;

/// <summary>Where each part is drawn, so that every place of it can name the others (IEC 61082-1): sheet, stroke, column.</summary>
internal sealed class CrossReferences
{
    private readonly ILookup<string, (int Sheet, string Aspect, string Place)> _places;

    public CrossReferences(IReadOnlyList<SheetLayout> sheets) =>
        _places = sheets.SelectMany((layout, index) => layout.Graph.Blocks
                .Where(block => !block.IsPassage)
                .Select(block => (block.Part!.Designation, Sheet: index, block.Aspect, Place: FormattableString.Invariant(
                    $"{index + 1}/{Paper.ColumnAt((layout.LeftOf(block) + layout.RightOf(block)) / 2)}"))))
            .ToLookup(each => each.Designation, each => (each.Sheet, each.Aspect, each.Place));

    /// <summary>The other places of a block's part: for a coil those of its contacts, for contacts that of their coil first.</summary>
    public string Words(Block block, int sheet)
    {
        var others = _places[block.Part!.Designation].Where(place => place.Sheet != sheet || place.Aspect != block.Aspect).ToList();
        var coil = others.Where(place => place.Aspect == Block.Coil).Select(place => "coil " + place.Place);
        var rest = others.Where(place => place.Aspect != Block.Coil).Select(place => place.Place).ToList();
        var lead = block.Aspect == Block.Coil ? "contacts " : "see ";
        return string.Join(", ", [.. coil, .. rest.Take(1).Select(place => lead + place), .. rest.Skip(1)]);
    }
}
