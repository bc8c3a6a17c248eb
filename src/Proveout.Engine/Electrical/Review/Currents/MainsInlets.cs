using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Where mains enters: a plug of a part that has a line and on which no conductor of the machine lands.</summary>
/// <remarks>The contacts of a socket outlet look alike, but no probe reaches them (IEC 60884-1 asks for shutters).</remarks>
internal static class MainsInlets
{
    /// <summary>The line terminal of every inlet.</summary>
    public static IEnumerable<(Part Part, Connector Connector)> Of(MachineDesign design) =>
        from part in design.Parts
        from connector in part.Type.Connectors
        where connector.Pluggable
        where connector.Terminals.Any(name => part.Type.FindTerminal(name) is { Role: TerminalRole.Line, Reachable: true })
        where !design.Conductors.Any(conductor => Lands(conductor.From, part, connector) || Lands(conductor.To, part, connector))
        select (part, connector);

    /// <summary>The terminal of a role on an inlet, or null.</summary>
    public static TerminalReference? Find(Part part, Connector connector, TerminalRole role) =>
        connector.Terminals.FirstOrDefault(name => part.Type.FindTerminal(name)!.Role == role) is { } terminal
            ? new TerminalReference(part.Designation, terminal)
            : null;

    private static bool Lands(TerminalReference end, Part part, Connector connector) =>
        end.Part == part.Designation && connector.Terminals.Contains(end.Terminal, StringComparer.Ordinal);
}
