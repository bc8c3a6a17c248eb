using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Which joints a change may have loosened: all that sit on the same terminal block as one that was touched.</summary>
internal static class TugsAgain
{
    public static IReadOnlyList<TugAgain> After(MachineDesign design, IEnumerable<DesignChange> changes) =>
    [
        .. from terminal in changes.Where(DisturbsJoints).SelectMany(change => change.Terminals).Distinct()
           let part = design.FindPart(terminal.Part)
           where part is not null
           group RowOf(part, terminal.Terminal) by PlaceOf(part, terminal.Terminal) into rows
           let conductors = ConductorsAt(design, [.. rows.SelectMany(row => row)])
           where conductors.Count > 0
           select new TugAgain(rows.Key, conductors),
    ];

    private static bool DisturbsJoints(DesignChange change) => !change.IsOnPaperOnly && change.Kind != ChangeKind.JumperChanged;

    private static string PlaceOf(Part part, string terminal) =>
        part.Type.ConnectorOf(terminal) is { } connector ? $"{part.Designation} {connector.Name}" : part.Designation;

    private static IEnumerable<TerminalReference> RowOf(Part part, string terminal)
    {
        var connector = part.Type.ConnectorOf(terminal)?.Name;
        return from other in part.Type.Terminals
               where part.Type.ConnectorOf(other.Name)?.Name == connector
               select new TerminalReference(part.Designation, other.Name);
    }

    private static ValueList<string> ConductorsAt(MachineDesign design, HashSet<TerminalReference> row) =>
        design.Conductors.Where(conductor => row.Contains(conductor.From) || row.Contains(conductor.To)).Select(conductor => conductor.Id).ToValueList();
}
