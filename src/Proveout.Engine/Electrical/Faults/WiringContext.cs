using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What fault rules ask of a machine's wiring.</summary>
public sealed class WiringContext
{
    // A conductor of half a square millimetre or more is a power conductor here; common practice (IEC 60204-1 table 5 asks 0.75 for power).
    private const double PowerSquareMillimetres = 0.5;

    private readonly NetClasses _classes;
    private readonly LinearOnePort _onePort;
    private readonly Dictionary<(string Conductor, string Terminal), NetworkElement> _joints;
    private readonly Dictionary<string, NetworkElement> _coppers;
    private readonly Dictionary<(string Part, string Terminal), NetworkElement> _matings;
    private readonly ILookup<TerminalReference, Conductor> _conductorsAt;
    private readonly Dictionary<(string Part, string Node), int> _partNodes;
    private readonly HashSet<(TerminalReference, TerminalReference)> _neighbours;

    /// <summary>Makes the context of a wiring network.</summary>
    public WiringContext(WiringNetwork wiring)
    {
        Wiring = wiring;
        _classes = new NetClasses(wiring);
        _onePort = new LinearOnePort(wiring);
        _joints = wiring.Elements.Where(element => element.Kind == ElementKind.Joint).ToDictionary(element => (element.Subject, element.Name));
        _coppers = wiring.Elements.Where(element => element.Kind == ElementKind.Copper).ToDictionary(element => element.Subject);
        _matings = wiring.Elements.Where(element => element.Kind == ElementKind.Mating).ToDictionary(element => (element.Subject, element.Name));
        _conductorsAt = wiring.Design.Conductors
            .SelectMany(conductor => new[] { (conductor.From, conductor), (conductor.To, conductor) })
            .ToLookup(item => item.Item1, item => item.conductor);
        _partNodes = wiring.Nodes
            .Where(node => node.Kind is NodeKind.Terminal or NodeKind.Inside)
            .ToDictionary(node => (node.Subject, node.Place), node => node.Index);
        Neighbours = [.. TerminalNeighbours.Pairs(wiring.Design)];
        _neighbours = [.. Neighbours];
    }

    /// <summary>The wiring network.</summary>
    public WiringNetwork Wiring { get; }

    /// <summary>The machine.</summary>
    public MachineDesign Design => Wiring.Design;

    /// <summary>Pairs of terminals that sit beside each other.</summary>
    public IReadOnlyList<(TerminalReference A, TerminalReference B)> Neighbours { get; }

    /// <summary>Conductors that land on a terminal.</summary>
    public IEnumerable<Conductor> ConductorsAt(TerminalReference terminal) => _conductorsAt[terminal];

    /// <summary>True when a conductor lands on the terminal.</summary>
    public bool IsWired(TerminalReference terminal) => _conductorsAt.Contains(terminal);

    /// <summary>True when something is wired to an end of an element.</summary>
    public bool IsInUse(NetworkElement element) => ClassOf(element.A) != NetClass.Spare || ClassOf(element.B) != NetClass.Spare;

    /// <summary>True when two terminals are one metal whatever the switches do, so that exchanging them changes nothing.</summary>
    public bool AreSame(TerminalReference a, TerminalReference b) => _classes.AreSame(Wiring.TerminalNode(a), Wiring.TerminalNode(b));

    /// <summary>True when two terminals sit side by side.</summary>
    public bool AreNeighbours(TerminalReference a, TerminalReference b) => _neighbours.Contains((a, b)) || _neighbours.Contains((b, a));

    /// <summary>The node of a terminal or inner node of a part; null for an inner node at which nothing stands that a meter could see.</summary>
    public int? FindNode(string part, string node) => _partNodes.TryGetValue((part, node), out var index) ? index : null;

    /// <summary>The joint of a conductor's end.</summary>
    public NetworkElement JointOf(Conductor conductor, TerminalReference terminal) => _joints[(conductor.Id, terminal.ToString())];

    /// <summary>The copper of a conductor.</summary>
    public NetworkElement CopperOf(Conductor conductor) => _coppers[conductor.Id];

    /// <summary>The mating of a pluggable terminal's contact and pin.</summary>
    public NetworkElement MatingOf(TerminalReference terminal) => _matings[(terminal.Part, terminal.Terminal)];

    /// <summary>What a node carries.</summary>
    public NetClass ClassOf(int node) => _classes.Of(node);

    /// <summary>What a terminal carries.</summary>
    public NetClass ClassOf(TerminalReference terminal) => ClassOf(Wiring.TerminalNode(terminal));

    /// <summary>What a conductor carries: protective only when it is green-yellow (IEC 60445), whatever it is bonded to.</summary>
    public NetClass ClassOf(Conductor conductor) => ClassOf(conductor.From) switch
    {
        _ when conductor.Colour == ConductorColour.GreenYellow => NetClass.ProtectiveEarth,
        NetClass.ProtectiveEarth => NetClass.ZeroVolt,
        var other => other,
    };

    /// <summary>What follows when two nodes are joined.</summary>
    public Consequence OfJoining(int a, int b) => ConsequenceRules.OfJoining(ClassOf(a), ClassOf(b), _classes.AreSame(a, b));

    /// <summary>What follows when a conductor is open, or has a poor joint.</summary>
    public Consequence OfOpening(Conductor conductor, bool poorOnly) =>
        ConsequenceRules.OfOpening(ClassOf(conductor), conductor.CrossSection.SquareMillimeters >= PowerSquareMillimetres, poorOnly);

    /// <summary>What follows when an end lands on another terminal: what it no longer feeds, and what it now meets.</summary>
    public Consequence OfMoving(Conductor conductor, TerminalReference from, TerminalReference to)
    {
        var far = conductor.From == from ? conductor.To : conductor.From;
        var (farNode, toNode) = (Wiring.TerminalNode(far), Wiring.TerminalNode(to));
        return _classes.AreSame(farNode, toNode)
            ? ConsequenceRules.Nothing
            : Consequence.Worse(OfOpening(conductor, poorOnly: false), OfJoining(farNode, toNode));
    }

    /// <summary>What follows when two ends change places.</summary>
    public Consequence OfSwapping(Conductor one, TerminalReference a, Conductor two, TerminalReference b) =>
        _onePort.IsBehind(JointOf(one, a), JointOf(two, b))
            ? ConsequenceRules.Nothing
            : Consequence.Worse(OfMoving(one, a, b), OfMoving(two, b, a));

    /// <summary>What a conductor is called: identifier and colour.</summary>
    public static string Name(Conductor conductor) => $"{conductor.Id} ({ColourWords.Of(conductor.Colour)})";

    /// <summary>Makes a fault of the network.</summary>
    public static WiringFault Fault(
        IWiringFaultRule rule,
        string id,
        string sentence,
        ValueList<string> subjects,
        Consequence consequence,
        string otherEvidence,
        params ElementChange[] changes) =>
        new(
            new Fault($"{rule.Kind}:{id}", rule.Kind, Capital.Of(sentence), subjects, consequence.Severity, consequence.Sentence, rule.Prior, otherEvidence),
            changes);

    /// <summary>The change that takes an end off one node and lands it on another.</summary>
    public ElementChange[] Move(Conductor conductor, TerminalReference from, TerminalReference to)
    {
        var joint = JointOf(conductor, from);
        return [new Cut(joint.Index), new Join(joint.A, Wiring.LandingNode(to), joint.LowOhms, joint.HighOhms)];
    }
}
