using Proveout.Engine.Machine;
using Proveout.Publish.Drawings;

namespace Proveout.Workshop;

/// <summary>Every drawing of a machine, under names that are unique in the machine and fit for files and addresses.</summary>
public static class MachineDrawings
{
    /// <summary>Schematic, surfaces, and a drawing of each part.</summary>
    public static IReadOnlyList<DrawingSheet> Of(MachineDesign design) =>
    [
        .. Named("schematic", SchematicDrawing.Of(design)),
        .. Named("surface", BayDrawing.Of(design)),
        .. design.Parts.SelectMany(part => Named($"part-{part.Designation.ToLowerInvariant()}", PartDrawing.Of(design, part.Designation))),
    ];

    /// <summary>One conductor from end to end; none when there is no such conductor.</summary>
    public static IReadOnlyList<DrawingSheet> OfWire(MachineDesign design, string conductor) =>
        design.Conductors.Any(candidate => candidate.Id == conductor) ? Named("wire", ConductorDrawing.Of(design, conductor)) : [];

    private static DrawingSheet[] Named(string kind, IReadOnlyList<DrawingSheet> sheets) =>
        sheets.Count == 1 ? [sheets[0] with { Name = kind }] : [.. sheets.Select((sheet, at) => sheet with
        {
            Name = FormattableString.Invariant($"{kind}-{at + 1}"),
            Title = sheets.Count(other => other.Title == sheet.Title) == 1 ? sheet.Title : FormattableString.Invariant($"{sheet.Title}, sheet {at + 1} of {sheets.Count}"),
        })];
}
