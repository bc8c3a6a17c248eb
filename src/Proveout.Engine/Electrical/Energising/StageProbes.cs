using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Where a voltmeter is put at a stage: poles of supplies, pins of plugs that are apart, metal against the protective conductor.</summary>
internal sealed class StageProbes(LiveModel model)
{
    private const double LeastVolts = 1;

    private readonly WiringContext _context = model.Context;

    /// <summary>The probes worth trying at a stage.</summary>
    /// <param name="apart">Plugs that are apart.</param>
    public IReadOnlyList<VoltageProbe> Of(IEnumerable<Gate> apart) =>
    [
        .. Supplies().Concat(apart.Where(gate => !gate.IsFuse).SelectMany(Pins)).Concat(Metal()).DistinctBy(probe => (probe.Red, probe.Black, probe.IsAlternating)),
    ];

    private IEnumerable<VoltageProbe> Supplies() =>
        from part in _context.Design.Parts
        from source in part.Type.Circuit.OfType<Source>()
        where IsTouchable(part, source.A) && IsTouchable(part, source.B) && source.Voltage.Volts >= LeastVolts
        select Between(part, source.A, source.B, "", isAlternating: false);

    // At a plug that is apart the pins are measured, before anything is mated with them.
    private IEnumerable<VoltageProbe> Pins(Gate gate)
    {
        var part = _context.Design.FindPart(gate.Part)!;
        var names = part.Type.Connectors.First(connector => connector.Name == gate.Name).Terminals;
        var terminals = names.Select(name => part.Type.FindTerminal(name)!).Where(terminal => terminal.Reachable).ToArray();
        var reference = terminals.FirstOrDefault(terminal => terminal.Role is TerminalRole.ZeroVolt or TerminalRole.Neutral)
            ?? terminals.LastOrDefault(terminal => terminal.Role is TerminalRole.Output or TerminalRole.Winding);
        var mains = terminals.Any(terminal => terminal.Role is TerminalRole.Line or TerminalRole.Neutral);
        return reference is null || mains
            ? []
            : terminals.Where(terminal => terminal != reference).Select(terminal => Between(part, terminal.Name, reference.Name, "pins", isAlternating: false));
    }

    private IEnumerable<VoltageProbe> Metal()
    {
        if (model.Mains is null || _context.Design.Parts.FirstOrDefault(IsInlet) is not { } inlet)
            return [];
        var earth = inlet.Type.Terminals.First(terminal => terminal.Role == TerminalRole.ProtectiveEarth);
        return from part in _context.Design.Parts
               where part.Type.ExposedConductivePart
               let metal = part.Type.Terminals.LastOrDefault(terminal => terminal.Role == TerminalRole.ProtectiveEarth)
               where metal is not null
               select new VoltageProbe(
                   Node(part, metal.Name),
                   Node(inlet, earth.Name),
                   new CheckPoint(part.Designation, metal.Name, ""),
                   new CheckPoint(inlet.Designation, earth.Name, ""),
                   IsAlternating: true);
    }

    private static bool IsInlet(Part part) =>
        part.Type.Terminals.Any(terminal => terminal.Role == TerminalRole.ProtectiveEarth)
        && part.Type.Connectors.Any(connector => connector.Pluggable && connector.Terminals.Any(name => part.Type.FindTerminal(name)!.Role == TerminalRole.Line));

    private VoltageProbe Between(Part part, string red, string black, string side, bool isAlternating) => new(
        Node(part, red), Node(part, black), new CheckPoint(part.Designation, red, side), new CheckPoint(part.Designation, black, side), isAlternating);

    private int Node(Part part, string terminal) => _context.Wiring.TerminalNode(new TerminalReference(part.Designation, terminal));

    private static bool IsTouchable(Part part, string node) => part.Type.FindTerminal(node) is { Reachable: true };
}
