using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Terminals of one part that a person could mistake for each other though they are not side by side.</summary>
internal static class TerminalPairs
{
    /// <summary>In a longer row nobody takes one end for another that is not beside it.</summary>
    public const int LongestRow = 8;

    /// <summary>Terminals of a part that a conductor lands on.</summary>
    public static IEnumerable<TerminalReference> WiredTerminals(WiringContext context, Part part) =>
        part.Type.Terminals.Select(terminal => new TerminalReference(part.Designation, terminal.Name)).Where(context.IsWired);

    /// <summary>Pairs of wired terminals of one row, two or more places apart, that are not one metal.</summary>
    public static IEnumerable<(TerminalReference A, TerminalReference B)> Apart(WiringContext context) =>
        from part in context.Design.Parts
        from row in TerminalNeighbours.RowsOf(part)
        where row.Length <= LongestRow
        from one in Enumerable.Range(0, row.Length)
        from two in Enumerable.Range(0, row.Length)
        where two >= one + 2
        let pair = (A: new TerminalReference(part.Designation, row[one]), B: new TerminalReference(part.Designation, row[two]))
        where context.IsWired(pair.A) && context.IsWired(pair.B) && !context.AreSame(pair.A, pair.B)
        select pair;
}
