using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Resistances that are what a part is for: heaters, coils, sensors, terminators; not resistors on a board, which no builder chooses.</summary>
internal static class OwnElements
{
    private const int MostTerminals = 8;

    /// <summary>Every such element.</summary>
    public static IEnumerable<NetworkElement> Of(WiringContext context) =>
        context.Wiring.Elements.Where(element =>
            element.Part is Resistor
            && !element.IsMetal
            && context.Design.FindPart(element.Subject)!.Type is { ExposedConductivePart: var isExposed } type
            && type.Terminals.Count <= MostTerminals
            && !(isExposed && type.ClassLetter == "T")
            && context.Wiring.Nodes[element.A].Kind == NodeKind.Terminal
            && context.Wiring.Nodes[element.B].Kind == NodeKind.Terminal);

    /// <summary>True when the element is connected to mains.</summary>
    public static bool IsMains(WiringContext context, NetworkElement element) =>
        context.ClassOf(element.A) is NetClass.Line or NetClass.Neutral || context.ClassOf(element.B) is NetClass.Line or NetClass.Neutral;

    /// <summary>True when the element heats: neither a winding nor data nor a sensor.</summary>
    public static bool IsHeater(WiringContext context, NetworkElement element) =>
        context.Design.FindPart(element.Subject)!.Type is { ClassLetter: "E" } type
        && !new[] { element.A, element.B }.Any(node =>
            type.FindTerminal(context.Wiring.Nodes[node].Place)!.Role is TerminalRole.Winding or TerminalRole.Data or TerminalRole.Signal);
}
