using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Metal that a person can touch, or an extra-low-voltage circuit that is bonded for the same reason.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Node">Its node.</param>
/// <param name="LineNode">The line that would touch it if its insulation failed; −1 when no mains enters.</param>
internal sealed record LiveExposed(string Name, int Node, int LineNode)
{
    public static IEnumerable<LiveExposed> Of(LiveModel model)
    {
        var context = model.Context;
        var inside = context.Design.Conductors
            .SelectMany(conductor => new[] { conductor.From, conductor.To })
            .Where(terminal => context.Design.FindTerminal(terminal)!.Role == TerminalRole.Line)
            .Select(context.Wiring.TerminalNode)
            .Append(-1)
            .First();
        foreach (var part in context.Design.Parts.Where(part => part.Type.ExposedConductivePart || LineOf(context, part) is not null))
            if (part.Type.Terminals.LastOrDefault(terminal => terminal.Role == TerminalRole.ProtectiveEarth) is { } metal)
                yield return new($"{part.Designation} ({part.Name})", NodeOf(context, part, metal), LineOf(context, part) ?? inside);
        foreach (var part in context.Design.Parts)
            if (LineOf(context, part) is { } line && part.Type.Circuit.OfType<Source>().FirstOrDefault() is { } source
                && part.Type.FindTerminal(source.B) is { } zero && IsBonded(model, NodeOf(context, part, zero)))
                yield return new($"the extra-low-voltage side of {part.Designation}", NodeOf(context, part, zero), line);
    }

    private static int NodeOf(WiringContext context, Part part, Terminal terminal) => context.Wiring.TerminalNode(new(part.Designation, terminal.Name));

    private static int? LineOf(WiringContext context, Part part) =>
        part.Type.Terminals.FirstOrDefault(terminal => terminal.Role == TerminalRole.Line && context.ConductorsAt(new(part.Designation, terminal.Name)).Any())
            is { } line
            ? NodeOf(context, part, line)
            : null;

    private static bool IsBonded(LiveModel model, int node) => model.Context.ClassOf(node) == NetClass.ProtectiveEarth
        || new ProtectivePaths(model, [], null).Reaches(node);
}
