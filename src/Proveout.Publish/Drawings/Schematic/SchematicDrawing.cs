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
        var plans = new SheetPlans(design, new WireFunctions(design)).Of();
        // A column depends on the layout, and a layout on the words of its references: places settle from the second round on.
        var layouts = plans.Select(plan => new SheetLayout(design, plan.Conductors, _ => "")).ToList();
        for (var round = 0; round < 3; round++)
        {
            var references = new CrossReferences(layouts);
            layouts = plans.Select((plan, index) => new SheetLayout(design, plan.Conductors, block => references.Words(block, index))).ToList();
        }

        return plans.Select((plan, index) => Sheet(design, plan, layouts[index], index, plans)).ToList();
    }

    private static DrawingSheet Sheet(MachineDesign design, SheetPlan plan, SheetLayout layout, int index, IReadOnlyList<SheetPlan> plans)
    {
        var sisters = plans.Where(each => each.Function == plan.Function).ToList();
        var title = Title(plan.Function) + (sisters.Count > 1 ? FormattableString.Invariant($", {sisters.IndexOf(plan) + 1} of {sisters.Count}") : "");
        var parts = layout.Graph.Blocks.Where(block => !block.IsPassage).Select(block => block.Part!.Designation).Distinct();
        return Paper.Sheet(
            FormattableString.Invariant($"schematic-{index + 1}"),
            title,
            $"Schematic, {title}: {plan.Conductors.Count} conductors between {string.Join(", ", parts)}.",
            (design.Name, plan.Function == WireFunction.Mains ? "Isolate, lock off and prove dead before any work." : ""),
            FormattableString.Invariant($"Schematic, sheet {index + 1} of {plans.Count}"),
            Content(layout),
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
