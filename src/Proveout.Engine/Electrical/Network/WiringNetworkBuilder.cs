using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Makes the wiring network of a machine.</summary>
public static class WiringNetworkBuilder
{
    /// <summary>Makes the network of a machine whose references all resolve (as the machine reader sees to).</summary>
    public static WiringNetwork Build(MachineDesign design)
    {
        var draft = new Draft();
        foreach (var part in design.Parts)
            AddPart(draft, part);
        foreach (var conductor in design.Conductors)
            AddConductor(draft, conductor);
        return new WiringNetwork(design, draft.Nodes, draft.Elements);
    }

    private static void AddPart(Draft draft, Part part)
    {
        foreach (var terminal in part.Type.Terminals)
            draft.Node(NodeKind.Terminal, part.Designation, terminal.Name);
        foreach (var terminal in part.Type.Connectors.Where(connector => connector.Pluggable).SelectMany(connector => connector.Terminals))
            draft.Element(
                ElementKind.Mating,
                draft.Node(NodeKind.PlugContact, part.Designation, terminal),
                draft.Node(NodeKind.Terminal, part.Designation, terminal),
                JointBands.Mating,
                part.Designation,
                terminal);
        foreach (var element in part.Type.Circuit)
            if (ElementBand.Of(element, part) is { } band)
                draft.Element(
                    ElementKind.Inside,
                    PartNode(draft, part, element.A),
                    PartNode(draft, part, element.B),
                    band,
                    part.Designation,
                    element.Name,
                    element);
        foreach (var setting in part.Jumpers)
            AddJumper(draft, part, setting);
    }

    private static void AddJumper(Draft draft, Part part, JumperSetting setting)
    {
        var jumper = part.Type.Jumpers.First(candidate => candidate.Name == setting.Jumper);
        var post = jumper.Positions.First(position => position.Name == setting.Position).Post;
        draft.Element(
            ElementKind.Jumper,
            PartNode(draft, part, jumper.Common),
            PartNode(draft, part, post),
            JointBands.Jumper,
            part.Designation,
            jumper.Name);
    }

    private static void AddConductor(Draft draft, Conductor conductor)
    {
        var from = AddEnd(draft, conductor, conductor.From);
        var to = AddEnd(draft, conductor, conductor.To);
        draft.Element(ElementKind.Copper, from, to, ConductorResistance.Band(conductor), conductor.Id, "");
    }

    private static int AddEnd(Draft draft, Conductor conductor, TerminalReference terminal)
    {
        var end = draft.NewNode(NodeKind.ConductorEnd, conductor.Id, terminal.ToString());
        var landing = draft.Find(NodeKind.PlugContact, terminal.Part, terminal.Terminal)
            ?? draft.Node(NodeKind.Terminal, terminal.Part, terminal.Terminal);
        draft.Element(ElementKind.Joint, end, landing, JointBands.Joint, conductor.Id, terminal.ToString());
        return end;
    }

    private static int PartNode(Draft draft, Part part, string name) =>
        draft.Node(part.Type.FindTerminal(name) is null ? NodeKind.Inside : NodeKind.Terminal, part.Designation, name);

    private sealed class Draft
    {
        private readonly Dictionary<(NodeKind, string, string), int> _index = [];

        public List<NetworkNode> Nodes { get; } = [];

        public List<NetworkElement> Elements { get; } = [];

        public int? Find(NodeKind kind, string subject, string place) =>
            _index.TryGetValue((kind, subject, place), out var index) ? index : null;

        public int Node(NodeKind kind, string subject, string place) => Find(kind, subject, place) ?? NewNode(kind, subject, place);

        public int NewNode(NodeKind kind, string subject, string place)
        {
            Nodes.Add(new NetworkNode(Nodes.Count, kind, subject, place));
            if (kind != NodeKind.ConductorEnd)
                _index[(kind, subject, place)] = Nodes.Count - 1;
            return Nodes.Count - 1;
        }

        public void Element(
            ElementKind kind,
            int a,
            int b,
            (double Low, double Nominal, double High) ohms,
            string subject,
            string name,
            CircuitElement? part = null) =>
            Elements.Add(new NetworkElement(Elements.Count, kind, a, b, ohms.Low, ohms.Nominal, ohms.High, subject, name, part));
    }
}
