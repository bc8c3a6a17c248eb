using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>What protective conductors join, with nothing else counted.</summary>
internal sealed class ProtectiveNets
{
    private readonly ReviewContext _context;
    private readonly Islands _islands;
    private readonly HashSet<int> _entries;

    public ProtectiveNets(ReviewContext context)
    {
        _context = context;
        var other = context.Design.Conductors
            .Where(conductor => conductor.Colour != ConductorColour.GreenYellow)
            .Select(conductor => conductor.Id)
            .ToHashSet(StringComparer.Ordinal);
        _islands = new Islands(
            context.Wiring.Nodes.Count,
            context.Wiring.Elements
                .Where(element => element.IsMetal && !(element.Kind == ElementKind.Copper && other.Contains(element.Subject)))
                .Select(element => (element.A, element.B)));
        _entries =
        [
            .. MainsInlets.Of(context.Design)
                .Select(inlet => MainsInlets.Find(inlet.Part, inlet.Connector, TerminalRole.ProtectiveEarth))
                .OfType<TerminalReference>()
                .Select(terminal => _islands.Of(context.Wiring.TerminalNode(terminal))),
        ];
    }

    /// <summary>True when the machine has an inlet with a protective pin.</summary>
    public bool HasEntry => _entries.Count > 0;

    /// <summary>True when protective conductors join a terminal to the inlet's protective pin.</summary>
    public bool IsBonded(TerminalReference terminal) => _entries.Contains(_islands.Of(_context.Wiring.TerminalNode(terminal)));
}
