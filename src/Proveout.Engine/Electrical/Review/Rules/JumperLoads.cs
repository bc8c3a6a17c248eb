using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>The loads that hang on the common post of a jumper.</summary>
internal static class JumperLoads
{
    /// <summary>Terminals of loads with a rated voltage, reached from the post over metal, the jumper itself pulled.</summary>
    public static IReadOnlyList<(Part Part, Terminal Terminal)> Of(ReviewContext context, Part part, Jumper jumper)
    {
        if (context.FindNode(part.Designation, jumper.Common) is not { } post)
            return [];
        var joined = context.JoinedTo(post, element => element.Kind == ElementKind.Jumper || element.Part is Diode or SwitchedPath);
        return
        [
            .. from node in joined.Select(index => context.Wiring.Nodes[index])
               where node.Kind == NodeKind.Terminal && node.Subject != part.Designation
               let load = context.Design.FindPart(node.Subject)!
               let terminal = load.Type.FindTerminal(node.Place)!
               where terminal.Voltage is not null && load.Type.ClassLetter != "X"
               where terminal.Role is TerminalRole.Positive or TerminalRole.Passive && !IsThrough(load, terminal)
               select (load, terminal),
        ];
    }

    /// <summary>True when the jumper chooses a supply voltage, rather than, say, a terminator.</summary>
    public static bool SelectsSupply(ReviewContext context, Part part, Jumper jumper) =>
        jumper.Positions.Any(position =>
            part.Type.Circuit.OfType<Source>().Any(source => source.A == position.Post)
            || context.SuppliesAtPost(part.Designation, position.Post).Count > 0);

    // A contact or fuse passes on what it gets; its rating is no wish.
    private static bool IsThrough(Part part, Terminal terminal) =>
        part.Type.Circuit.Any(element => element is Contact or Fuse && (element.A == terminal.Name || element.B == terminal.Name));
}
