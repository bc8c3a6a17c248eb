using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Tells what each conductor serves, from the roles of the terminals on its net: what fuses, contacts, clamps and plugs join counts as one.</summary>
internal sealed class WireFunctions
{
    // Parts of these class letters pass on what they are given (IEC 81346-2); tracks and clamps stay below this resistance, windings and coils above.
    private const string PassingLetters = "XFSKQ";
    private const double MostOhmsOfAJoint = 0.6;

    private readonly MachineDesign _design;
    private readonly Dictionary<TerminalReference, TerminalReference> _towards = [];
    private readonly Dictionary<TerminalReference, HashSet<WireFunction>> _serves = [];

    public WireFunctions(MachineDesign design)
    {
        _design = design;
        foreach (var part in design.Parts.Where(part => PassingLetters.Contains(part.Type.ClassLetter, StringComparison.Ordinal)))
            foreach (var element in part.Type.Circuit.Where(Joins))
                Join(new(part.Designation, element.A), new(part.Designation, element.B));
        foreach (var conductor in design.Conductors.Where(each => !IsProtective(each)))
            Join(conductor.From, conductor.To);
        foreach (var end in design.Conductors.Where(each => !IsProtective(each)).SelectMany(each => new[] { each.From, each.To }).Distinct())
            Note(end);
    }

    /// <summary>What a conductor serves.</summary>
    public WireFunction Of(Conductor conductor)
    {
        if (IsProtective(conductor))
            return WireFunction.ProtectiveEarth;
        var serves = _serves[Head(conductor.From)];
        if (serves.Contains(WireFunction.Mains))
            return WireFunction.Mains;
        if (serves.Contains(WireFunction.Data) || (PlugHas(conductor.From, TerminalRole.Data) && PlugHas(conductor.To, TerminalRole.Data)))
            return WireFunction.Data;
        WireFunction[] order = [WireFunction.Motors, WireFunction.Supply, WireFunction.Sensors, WireFunction.Outputs];
        return order.Where(serves.Contains).DefaultIfEmpty(WireFunction.Supply).First();
    }

    private static bool Joins(CircuitElement element) =>
        element is Fuse or Proveout.Engine.Machine.Contact || (element is Resistor { Value.High: { } high } && high.Ohms <= MostOhmsOfAJoint);

    private bool IsProtective(Conductor conductor) =>
        conductor.Colour == ConductorColour.GreenYellow || RoleOf(conductor.From) == TerminalRole.ProtectiveEarth || RoleOf(conductor.To) == TerminalRole.ProtectiveEarth;

    private TerminalRole? RoleOf(TerminalReference end) => _design.FindTerminal(end)?.Role;

    private bool PlugHas(TerminalReference end, TerminalRole role)
    {
        var type = _design.FindPart(end.Part)!.Type;
        return type.ConnectorOf(end.Terminal)?.Terminals.Any(name => type.FindTerminal(name)?.Role == role) ?? RoleOf(end) == role;
    }

    private void Note(TerminalReference end)
    {
        var letter = _design.FindPart(end.Part)!.Type.ClassLetter;
        var head = Head(end);
        if (!_serves.TryGetValue(head, out var serves))
            _serves[head] = serves = [];
        foreach (var function in Functions())
            serves.Add(function);

        IEnumerable<WireFunction> Functions()
        {
            var role = RoleOf(end);
            if (role is TerminalRole.Line or TerminalRole.Neutral)
                yield return WireFunction.Mains;
            if (role == TerminalRole.Data)
                yield return WireFunction.Data;
            if (role == TerminalRole.Winding)
                yield return WireFunction.Motors;
            if (letter == "T")
                yield return WireFunction.Supply;
            if (letter == "B" || PlugHas(end, TerminalRole.Signal))
                yield return WireFunction.Sensors;
            if (role == TerminalRole.Output)
                yield return WireFunction.Outputs;
        }
    }

    private void Join(TerminalReference a, TerminalReference b) => _towards[Head(a)] = Head(b);

    private TerminalReference Head(TerminalReference end)
    {
        while (_towards.TryGetValue(end, out var next) && next != end)
            end = next;
        return end;
    }
}
