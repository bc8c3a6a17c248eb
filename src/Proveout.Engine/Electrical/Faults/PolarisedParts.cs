using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Parts that mind which way round they are wired.</summary>
internal static class PolarisedParts
{
    /// <summary>True when the two terminals are the poles of one polarised port: plus and zero volt, or a junction between them.</summary>
    public static bool IsPolarisedPair(MachineDesign design, TerminalReference a, TerminalReference b)
    {
        if (a.Part != b.Part || design.FindPart(a.Part) is not { } part)
            return false;
        var roles = (part.Type.FindTerminal(a.Terminal)!.Role, part.Type.FindTerminal(b.Terminal)!.Role);
        return roles is (TerminalRole.Positive, TerminalRole.ZeroVolt) or (TerminalRole.ZeroVolt, TerminalRole.Positive)
            || (AreAlone(part.Type, a, b) && part.Type.Circuit.OfType<Diode>().Any(diode => Joins(diode, a, b)));
    }

    // A junction from a supply to an output inside a board makes no polarised pair of the two.
    private static bool AreAlone(PartType type, TerminalReference a, TerminalReference b) =>
        type.Terminals.Count == 2 || (type.ConnectorOf(a.Terminal) is { Terminals.Count: 2 } pair && pair == type.ConnectorOf(b.Terminal));

    private static bool Joins(Diode diode, TerminalReference a, TerminalReference b) =>
        (diode.A == a.Terminal && diode.B == b.Terminal) || (diode.A == b.Terminal && diode.B == a.Terminal);
}
