namespace Proveout.Publish.Drawings;

/// <summary>Where each part is drawn, so that every place of it can name the others (IEC 61082-1): sheet, stroke, column in which the designation stands.</summary>
internal sealed class CrossReferences
{
    private readonly ILookup<string, (int Band, string Aspect, string Place)> _places;

    public CrossReferences(IReadOnlyList<BandSheet> sheets, IReadOnlyList<SheetLayout> layouts) =>
        _places = sheets.SelectMany((sheet, index) => sheet.Bands.SelectMany(band => layouts[band].Graph.Blocks
                .Where(block => !block.IsPassage)
                .Select(block => (block.Part!.Designation, Band: band, block.Aspect, Place: FormattableString.Invariant(
                    $"{index + 1}/{Paper.ColumnAt(layouts[band].LeftOf(block))}")))))
            .ToLookup(each => each.Designation, each => (each.Band, each.Aspect, each.Place));

    /// <summary>The other places of a block's part: for a coil those of its contacts, for contacts that of their coil first.</summary>
    public string Words(Block block, int band)
    {
        var others = _places[block.Part!.Designation].Where(place => place.Band != band || place.Aspect != block.Aspect).ToList();
        var coil = others.Where(place => place.Aspect == Block.Coil).Select(place => "coil " + place.Place);
        var rest = others.Where(place => place.Aspect != Block.Coil).Select(place => place.Place).ToList();
        var lead = block.Aspect == Block.Coil ? "contacts " : "see ";
        return string.Join(", ", [.. coil, .. rest.Take(1).Select(place => lead + place), .. rest.Skip(1)]);
    }
}
