using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>
/// The page of one part: connector by connector, seen from the side where the conductors enter, which conductor lands on which terminal; its colour as
/// paint, word and code; where its other end is; and each jumper in its position with what it gives.
/// </summary>
public static class PartDrawing
{
    private const double RoomMm = Paper.Bottom - Paper.Top + 4;
    private const int MostRows = (int)((RoomMm - PartBlock.HeadHeight - 2) / PartBlock.RowHeight);

    /// <summary>The sheets of a part.</summary>
    /// <exception cref="ArgumentException">The machine has no such part.</exception>
    public static IReadOnlyList<DrawingSheet> Of(MachineDesign design, string designation)
    {
        ArgumentNullException.ThrowIfNull(design);
        var part = design.FindPart(designation) ?? throw new ArgumentException($"The machine has no part {designation}.", nameof(designation));
        var columns = Columns(PartBlock.Of(design, part, MostRows));
        var pages = columns.Chunk(2).ToList();
        return [.. pages.Select((page, index) => Sheet(design, part, page, index, pages.Count))];
    }

    private static List<List<PartBlock>> Columns(IEnumerable<PartBlock> blocks)
    {
        var columns = new List<List<PartBlock>> { new() };
        foreach (var block in blocks)
        {
            if (columns[^1].Count > 0 && HeightOf(columns[^1]) + block.Height > RoomMm)
                columns.Add([]);
            columns[^1].Add(block);
        }

        return columns;
    }

    private static DrawingSheet Sheet(MachineDesign design, Part part, List<PartBlock>[] columns, int index, int count)
    {
        var landings = columns.SelectMany(column => column).SelectMany(block => block.Rows).Where(row => row.Conductor is not null)
            .Select(row => $"{row.Terminal}: {row.Conductor!.Id}, {ColourWords.Of(row.Conductor.Colour)}, to {row.Other}");
        var jumpers = columns.SelectMany(column => column).Where(block => block.Jumper is not null).Select(block => block.Heading);
        return Paper.Sheet(
            FormattableString.Invariant($"part-{part.Designation}-{index + 1}"),
            $"{part.Designation}, {part.Name}",
            $"{string.Join("; ", [.. jumpers, .. landings])}.",
            (design.Name, $"{part.Type.Name}. Terminals as one sees them where the conductors enter."),
            FormattableString.Invariant($"Part, sheet {index + 1} of {count}"),
            columns.SelectMany((column, at) => Column(design, column, at)),
            height: Paper.Height - RoomMm + columns.Max(HeightOf));
    }

    private static double HeightOf(List<PartBlock> column) => column.Sum(block => block.Height);

    private static IEnumerable<XElement> Column(MachineDesign design, List<PartBlock> blocks, int at)
    {
        var painter = new PartPainter(design, Paper.Left + (at * (PartPainter.Width + 9)));
        var top = Paper.Top - 4;
        foreach (var block in blocks)
        {
            foreach (var element in painter.Draw(block, top))
                yield return element;
            top += block.Height;
        }
    }
}
