using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Which terminals sit beside each other, so that a conductor can land on the wrong one or a strand can bridge them.</summary>
internal static class TerminalNeighbours
{
    /// <summary>Every pair of neighbours once: along each connector; on a part without fixed connectors, along its other terminals; between like parts in one place, at their ends.</summary>
    public static IEnumerable<(TerminalReference A, TerminalReference B)> Pairs(MachineDesign design) =>
        design.Parts.SelectMany(WithinPart).Concat(BetweenParts(design));

    /// <summary>The rows of terminals of a part, each in the order in which they sit beside each other.</summary>
    public static IReadOnlyList<string[]> RowsOf(Part part)
    {
        var rows = part.Type.Connectors.Select(connector => connector.Terminals.ToArray()).ToList();
        var inRows = rows.SelectMany(names => names).ToHashSet(StringComparer.Ordinal);
        if (part.Type.Connectors.All(connector => connector.Pluggable))
            rows.Add([.. part.Type.Terminals.Select(terminal => terminal.Name).Where(name => !inRows.Contains(name))]);
        return rows;
    }

    private static IEnumerable<(TerminalReference A, TerminalReference B)> WithinPart(Part part) =>
        RowsOf(part).SelectMany(row => Along(part.Designation, row));

    private static IEnumerable<(TerminalReference A, TerminalReference B)> Along(string part, string[] row) =>
        row.Zip(row.Skip(1), (one, two) => (new TerminalReference(part, one), new TerminalReference(part, two)));

    private static IEnumerable<(TerminalReference A, TerminalReference B)> BetweenParts(MachineDesign design) =>
        from pair in design.Parts.Zip(design.Parts.Skip(1))
        where pair.First.Place == pair.Second.Place && pair.First.Type.Id == pair.Second.Type.Id
        where pair.First.Type.Connectors.All(connector => !connector.Pluggable) && pair.First.Type.Terminals.Count > 0
        select (
            new TerminalReference(pair.First.Designation, pair.First.Type.Terminals[^1].Name),
            new TerminalReference(pair.Second.Designation, pair.Second.Type.Terminals[0].Name));
}
