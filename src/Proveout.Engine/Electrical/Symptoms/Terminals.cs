using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Finds terminals that a lead reaches on the energised machine.</summary>
internal static class Terminals
{
    /// <summary>Terminals of a role on a part, or on one connector, that a lead reaches.</summary>
    public static IEnumerable<TerminalReference> Of(Part part, TerminalRole role, Connector? connector = null) =>
        from terminal in part.Type.Terminals
        where terminal.Role == role && terminal.Reachable
        where connector is null || connector.Terminals.Contains(terminal.Name, StringComparer.Ordinal)
        select new TerminalReference(part.Designation, terminal.Name);

    /// <summary>The zero volt that belongs to a terminal: of its own connector, else of its part, else of the supply.</summary>
    public static TerminalReference? ZeroOf(MachineDesign design, Part part, string terminal) =>
        Of(part, TerminalRole.ZeroVolt, part.Type.ConnectorOf(terminal)).Cast<TerminalReference?>().FirstOrDefault()
        ?? Of(part, TerminalRole.ZeroVolt).Cast<TerminalReference?>().FirstOrDefault()
        ?? Supplies(design).Select(supply => (TerminalReference?)supply.Negative).FirstOrDefault();

    /// <summary>Supplies whose poles a lead reaches.</summary>
    public static IEnumerable<(TerminalReference Positive, TerminalReference Negative)> Supplies(MachineDesign design) =>
        from part in design.Parts
        from source in part.Type.Circuit.OfType<Source>()
        where part.Type.FindTerminal(source.A) is { Reachable: true } && part.Type.FindTerminal(source.B) is { Reachable: true }
        select (new TerminalReference(part.Designation, source.A), new TerminalReference(part.Designation, source.B));

    /// <summary>True when a conductor lands on a terminal.</summary>
    public static bool IsWired(WiringContext context, TerminalReference terminal) => context.ConductorsAt(terminal).Any();
}
