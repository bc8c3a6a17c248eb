using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A terminal with the voltage that it bears against its companions.</summary>
/// <param name="Terminal">The terminal.</param>
/// <param name="Node">Its node.</param>
/// <param name="Companions">Nodes of its companions: 0 V or neutral of the same part, else the other terminals of its kind.</param>
/// <param name="LimitVolts">Highest voltage.</param>
/// <param name="IsMains">True for line, neutral and contacts, which are rated in rms of an alternating voltage.</param>
/// <param name="IsPositive">True when it minds which way round the voltage is.</param>
/// <param name="IsInput">True when a board reads its voltage.</param>
internal sealed record LivePort(TerminalReference Terminal, int Node, int[] Companions, double LimitVolts, bool IsMains, bool IsPositive, bool IsInput)
{
    public static IEnumerable<LivePort> Of(WiringContext context)
    {
        foreach (var part in context.Design.Parts)
            foreach (var terminal in part.Type.Terminals.Where(terminal => terminal.Voltage is not null))
            {
                var others = CompanionsOf(part.Type, terminal);
                int[] companions = [.. others.Select(other => context.Wiring.TerminalNode(new(part.Designation, other.Name)))];
                if (companions.Length > 0)
                    yield return new(
                        new(part.Designation, terminal.Name),
                        context.Wiring.TerminalNode(new(part.Designation, terminal.Name)),
                        companions,
                        terminal.Voltage!.Value.Volts,
                        IsMainsRole(terminal.Role),
                        terminal.Role == TerminalRole.Positive && others.All(other => other.Role == TerminalRole.ZeroVolt),
                        terminal.Role == TerminalRole.Signal && part.Type.ClassLetter == "A");
            }
    }

    private static bool IsMainsRole(TerminalRole role) => role is TerminalRole.Line or TerminalRole.Neutral or TerminalRole.Passive;

    // A sensor or switch has nothing but its own other lead; a board measures against its 0 V.
    private static List<Terminal> CompanionsOf(PartType type, Terminal terminal)
    {
        var sameSide = type.Terminals
            .Where(other => other != terminal && other.Role != TerminalRole.ProtectiveEarth && IsMainsRole(other.Role) == IsMainsRole(terminal.Role))
            .ToList();
        var zero = sameSide.Where(other => other.Role == (IsMainsRole(terminal.Role) ? TerminalRole.Neutral : TerminalRole.ZeroVolt)).ToList();
        var connector = type.ConnectorOf(terminal.Name);
        var near = zero.Where(other => connector?.Terminals.Contains(other.Name, StringComparer.Ordinal) == true).ToList();
        return near.Count > 0 ? near : zero.Count > 0 ? zero[..1]
            : sameSide.Where(other => connector?.Terminals.Contains(other.Name, StringComparer.Ordinal) == true).ToList() is { Count: > 0 } row ? row : sameSide;
    }
}
