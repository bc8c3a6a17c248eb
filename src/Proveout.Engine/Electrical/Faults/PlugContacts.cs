using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Contacts of plugs.</summary>
internal static class PlugContacts
{
    /// <summary>Every pluggable terminal that a conductor lands on.</summary>
    public static IEnumerable<TerminalReference> Wired(WiringContext context) =>
        from part in context.Design.Parts
        from connector in part.Type.Connectors
        where connector.Pluggable
        from name in connector.Terminals
        let terminal = new TerminalReference(part.Designation, name)
        where context.IsWired(terminal)
        select terminal;
}
