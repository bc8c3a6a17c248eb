using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What review rules ask of a design.</summary>
public sealed class ReviewContext
{
    // Below this a resistance is a sensor, a pull-up, a discharge resistor: no load that a conductor or fuse feels.
    private const double LeastLoadAmperes = 0.02;

    // IEC 60204-1 clause 4.4.3: electrical equipment works in air of up to 40 °C.
    private const double StandardAmbient = 40;

    private readonly FeedNetwork _feeds;
    private readonly Dictionary<(string Part, string Node), int> _nodes;
    private readonly Terminal?[] _terminals;
    private readonly ILookup<int, SupplyReach> _fedAt;
    private readonly ILookup<int, SupplyReach> _returnedAt;
    private readonly Dictionary<string, Conductor> _conductors;
    private readonly Lazy<Demands> _demands;
    private readonly Lazy<BranchCurrents> _currents;
    private readonly Lazy<ConductorLoading> _loading;
    private readonly Lazy<IReadOnlyList<MotorPhase>> _motors;
    private readonly Lazy<MachineLayout> _layout;
    private readonly Lazy<RouteStretches> _stretches;

    /// <summary>Makes the context of a wiring network.</summary>
    public ReviewContext(WiringNetwork wiring)
    {
        Context = new WiringContext(wiring);
        _nodes = wiring.Nodes
            .Where(node => node.Kind is NodeKind.Terminal or NodeKind.Inside)
            .ToDictionary(node => (node.Subject, node.Place), node => node.Index);
        _conductors = Design.Conductors.ToDictionary(conductor => conductor.Id, StringComparer.Ordinal);
        _terminals = [.. wiring.Nodes.Select(node => node.Kind == NodeKind.Terminal ? Design.FindTerminal(new(node.Subject, node.Place)) : null)];
        _feeds = new FeedNetwork(wiring, _nodes);
        Supplies = [.. ReviewSupplies.Of(this).Select(supply => new SupplyReach(supply, _feeds))];
        _fedAt = Supplies.SelectMany(reach => reach.Fed.Select(node => (node, reach))).ToLookup(at => at.node, at => at.reach);
        _returnedAt = Supplies.SelectMany(reach => reach.Returned.Select(node => (node, reach))).ToLookup(at => at.node, at => at.reach);
        Loads = [.. wiring.Elements.SelectMany(LoadsOf)];
        Consumers = [.. ConsumerPorts()];
        _motors = new(() => [.. Electrical.MotorPhases.Of(this)]);
        _demands = new(() => new(this));
        _currents = new(() => new(Demands.All, wiring));
        _loading = new(() => new(this));
        _layout = new(() => MachineLayout.Of(Design));
        _stretches = new(() => new(Layout));
    }

    /// <summary>The classes of nodes and conductors.</summary>
    public WiringContext Context { get; }

    /// <summary>The wiring.</summary>
    public WiringNetwork Wiring => Context.Wiring;

    /// <summary>The machine.</summary>
    public MachineDesign Design => Context.Design;

    /// <summary>What the machine file says to the review.</summary>
    public ReviewSettings Settings => Design.Review;

    /// <summary>Temperature of the air in the enclosure in °C.</summary>
    public double Ambient => Settings.Ambient?.DegreesCelsius ?? StandardAmbient;

    /// <summary>Every supply with what it reaches.</summary>
    public IReadOnlyList<SupplyReach> Supplies { get; }

    /// <summary>Loads of known current that are resistances.</summary>
    public IReadOnlyList<Load> Loads { get; }

    /// <summary>Powered inputs.</summary>
    public IReadOnlyList<ConsumerPort> Consumers { get; }

    /// <summary>Outputs that hold a current, each with its winding.</summary>
    public IReadOnlyList<MotorPhase> MotorPhases => _motors.Value;

    /// <summary>Where parts sit and conductors run.</summary>
    public MachineLayout Layout => _layout.Value;

    /// <summary>Which stretch of each route each conductor runs through.</summary>
    internal RouteStretches Stretches => _stretches.Value;

    /// <summary>Everything that takes current.</summary>
    internal Demands Demands => _demands.Value;

    /// <summary>The current everywhere.</summary>
    internal BranchCurrents Currents => _currents.Value;

    /// <summary>What each conductor bears where it lies.</summary>
    internal ConductorLoading Loading => _loading.Value;

    /// <summary>Electronic switches that part types describe.</summary>
    internal IReadOnlyList<NetworkElement> Switches => _feeds.Switches;

    /// <summary>True when a conductor carries mains.</summary>
    public bool IsMains(Conductor conductor) => Context.ClassOf(conductor) is NetClass.Line or NetClass.Neutral;

    /// <summary>The terminal at a node, or null.</summary>
    public Terminal? TerminalAt(int node) => _terminals[node];

    /// <summary>The conductor with an identifier, or null.</summary>
    public Conductor? FindConductor(string id) => _conductors.GetValueOrDefault(id);

    /// <summary>The part that an element belongs to.</summary>
    public Part PartOf(NetworkElement element) => Design.FindPart(element.Subject)!;

    /// <summary>Supplies whose positive pole or line reaches a node.</summary>
    public IEnumerable<SupplyReach> SuppliesAt(int node) => _fedAt[node];

    /// <summary>Supplies whose negative pole or neutral reaches a node.</summary>
    public IEnumerable<SupplyReach> ReturnsAt(int node) => _returnedAt[node];

    /// <summary>Supplies that drive a current in at one node and out at another.</summary>
    public IEnumerable<SupplyReach> SuppliesOf(int fed, int returned) => SuppliesAt(fed).Where(reach => reach.Drives(fed, returned));

    /// <summary>The supply that a source lives on; null when it stands on its own, or is not fed.</summary>
    public SupplyReach? FeederOf(SupplyReach reach) =>
        reach.Supply is { Part: { } part, Source.Feed: { } feed } && FindNode(part.Designation, feed.A) is { } a && FindNode(part.Designation, feed.B) is { } b
            ? SuppliesOf(a, b).FirstOrDefault(above => above != reach)
            : null;

    /// <summary>Nodes that hang together with one through metal, contacts and switches, some elements left out.</summary>
    public IReadOnlySet<int> JoinedTo(int node, Func<NetworkElement, bool> leftOut) => _feeds.Joined(node, leftOut);

    /// <summary>The node of a terminal or inner node of a part; null for an inner node at which nothing stands that a meter could see.</summary>
    public int? FindNode(string part, string node) => _nodes.TryGetValue((part, node), out var index) ? index : null;

    /// <summary>Every supply that reaches a jumper's post with all jumpers pulled.</summary>
    public IReadOnlyList<Supply> SuppliesAtPost(string part, string post)
    {
        if (FindNode(part, post) is not { } node)
            return [];
        var joined = JoinedTo(node, element => element.Kind == ElementKind.Jumper);
        return [.. Supplies.Select(reach => reach.Supply).Where(supply => joined.Contains(supply.Plus))];
    }

    /// <summary>A number with at most so many decimals.</summary>
    public static string Number(double value, int decimals = 1) =>
        value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    private IEnumerable<ConsumerPort> ConsumerPorts() =>
        from part in Design.Parts
        from consumer in part.Type.Circuit.OfType<Consumer>()
        let a = FindNode(part.Designation, consumer.A)
        let b = FindNode(part.Designation, consumer.B)
        where a is not null && b is not null
        select new ConsumerPort(part, consumer, a.Value, b.Value);

    private IEnumerable<Load> LoadsOf(NetworkElement element) =>
        element is not { Part: Resistor, IsMetal: false }
            ? []
            : from ends in new[] { (Fed: element.A, Returned: element.B), (Fed: element.B, Returned: element.A) }
              from reach in SuppliesOf(ends.Fed, ends.Returned)
              where reach.Supply.Volts / element.NominalOhms >= LeastLoadAmperes
              select new Load(element, reach, ends.Fed, ends.Returned);
}
