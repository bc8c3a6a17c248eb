using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>
/// The schematic of a machine: sheets by function, symbols after IEC 60617, designations after IEC 81346-2, every conductor once with identifier, colour code
/// and cross-section, and references between the places of a part in both directions. Equal designs give equal sheets.
/// </summary>
public static class SchematicDrawing
{
    /// <summary>All sheets, in order; none when the machine has no conductors.</summary>
    public static IReadOnlyList<DrawingSheet> Of(MachineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var bands = new Bands(design, new WireFunctions(design)).Of();
        var layouts = Layouts((_, _) => Bands.ReferencesToCome);
        var sheets = BandSheet.Pack(bands, layouts);
        // How many references a part has decides how high its block is, and so which bands share a sheet; how long they are does not change its column.
        layouts = Layouts(References());
        sheets = BandSheet.Pack(bands, layouts);
        layouts = Layouts(References());
        foreach (var sheet in sheets)
            sheet.Arrange(layouts);
        return [.. sheets.Select((sheet, index) => Sheet(design, bands, layouts, sheets, index))];

        IReadOnlyList<SheetLayout> Layouts(Func<Block, int, string> words) =>
            [.. bands.Select((band, index) => new SheetLayout(design, band.Conductors, block => words(block, index)))];

        Func<Block, int, string> References()
        {
            foreach (var sheet in sheets)
                sheet.Arrange(layouts);
            return new CrossReferences(sheets, layouts).Words;
        }
    }

    private static DrawingSheet Sheet(
        MachineDesign design, IReadOnlyList<Band> bands, IReadOnlyList<SheetLayout> layouts, IReadOnlyList<BandSheet> sheets, int index)
    {
        var sheet = sheets[index];
        var sisters = sheets.Where(each => each.Function == sheet.Function).ToList();
        var title = Title(sheet.Function) + (sisters.Count > 1 ? FormattableString.Invariant($", {sisters.IndexOf(sheet) + 1} of {sisters.Count}") : "");
        var parts = sheet.Bands.SelectMany(band => layouts[band].Graph.Blocks).Where(block => !block.IsPassage).Select(block => block.Part!.Designation).Distinct();
        return Paper.Sheet(
            FormattableString.Invariant($"schematic-{index + 1}"),
            title,
            $"Schematic, {title}: {sheet.Bands.Sum(band => bands[band].Conductors.Count)} conductors between {string.Join(", ", parts)}.",
            (design.Name, sheet.Function == WireFunction.Mains ? "Isolate, lock off and prove dead before any work." : ""),
            FormattableString.Invariant($"Schematic, sheet {index + 1} of {sheets.Count}"),
            sheet.Bands.SelectMany(band => Content(layouts[band])),
            hasColumns: true);
    }

    private static string Title(WireFunction function) => function switch
    {
        WireFunction.Mains => "Mains",
        WireFunction.ProtectiveEarth => "Protective earth",
        WireFunction.Supply => "Supply and controller power",
        WireFunction.Outputs => "Controller outputs",
        _ => function.ToString(),
    };

    private static IEnumerable<XElement> Content(SheetLayout layout)
    {
        for (var layer = 0; layer < layout.Channels.Count; layer++)
            foreach (var run in layout.Channels[layer].Runs)
                yield return Wire(layout, run, layer);
        foreach (var run in layout.Channels.SelectMany(channel => channel.Runs).Where(SheetLayout.IsMarked))
            yield return Shape.Text(WirePaint.Mark(run.Left.Wire), layout.RightOf(run.Left.Block) + 1.2, layout.Y(run.From) - 0.7, Paper.Small, 60);
        foreach (var element in layout.Graph.Blocks.SelectMany(block => new BlockPainter(layout, block).Draw()))
            yield return element;
    }

    private static XElement Wire(SheetLayout layout, Run run, int layer)
    {
        var wire = Shape.Path(WirePaint.Data(layout.Corners(run, layer)), "none", Shape.Ink, 0.3);
        wire.SetAttributeValue("data-conductor", run.Left.Wire.Id);
        wire.Add(Shape.Title($"{run.Left.Wire.Id}: {run.Left.Wire.From} to {run.Left.Wire.To}, {ColourWords.Of(run.Left.Wire.Colour)}"));
        return wire;
    }
}
