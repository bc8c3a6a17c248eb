using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Makes bands no larger than a sheet, function by function: what runs between the same two parts stays together, and what is wired to the band's parts comes next.</summary>
internal sealed class Bands(MachineDesign design, WireFunctions functions)
{
    // Fewer wires than fill a sheet, so that a plug of many poles can be split.
    private const int MostOfABundle = 16;
    private const int Tries = 3;

    // Room for the references, which are known only when all sheets are.
    public const string ReferencesToCome = "see 00/0, 00/0";

    public IReadOnlyList<Band> Of() => [.. Enum.GetValues<WireFunction>().SelectMany(OfFunction)];

    private IEnumerable<Band> OfFunction(WireFunction function)
    {
        var open = design.Conductors.Where(conductor => functions.Of(conductor) == function)
            .GroupBy(conductor => string.CompareOrdinal(conductor.From.Part, conductor.To.Part) < 0 ? (conductor.From.Part, conductor.To.Part) : (conductor.To.Part, conductor.From.Part))
            .SelectMany(bundle => bundle.Chunk(MostOfABundle))
            .ToList();
        while (open.Count > 0)
            yield return new(function, Fill(open));
    }

    private List<Conductor> Fill(List<Conductor[]> open)
    {
        var sheet = new List<Conductor>(open[0]);
        open.RemoveAt(0);
        while (Next(sheet, open) is { } next)
        {
            sheet.AddRange(next);
            open.Remove(next);
        }

        return sheet;
    }

    private Conductor[]? Next(List<Conductor> sheet, List<Conductor[]> open)
    {
        var parts = sheet.SelectMany(each => new[] { each.From.Part, each.To.Part }).ToHashSet();
        return open.OrderBy(bundle => parts.Contains(bundle[0].From.Part) || parts.Contains(bundle[0].To.Part) ? 0 : 1)
            .Take(Tries)
            .FirstOrDefault(bundle => new SheetLayout(design, [.. sheet, .. bundle], _ => ReferencesToCome).Fits);
    }
}
