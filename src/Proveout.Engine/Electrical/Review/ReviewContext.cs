using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What review rules ask of a design.</summary>
public sealed class ReviewContext
{
    // Below this a resistance is a sensor, a pull-up, a discharge resistor: no load that a conductor or fuse feels.
    private const double LeastLoadAmperes = 0.02;

    private readonly FeedNetwork _feeds;
    private readonly Dictionary<(string Part, string Node), int> _nodes;

    /// <summary>Makes the context of a wiring network.</summary>
    public ReviewContext(WiringNetwork wiring)
    {
        Context = new WiringContext(wiring);
        _feeds = new FeedNetwork(wiring);
        _nodes = wiring.Nodes
            .Where(node => node.Kind is NodeKind.Terminal or NodeKind.Inside)
            .ToDictionary(node => (node.Subject, node.Place), node => node.Index);
        Supplies = [.. Mains(wiring).Concat(Sources()).Select(supply => new SupplyReach(supply, _feeds))];
        Loads = [.. wiring.Elements.SelectMany(LoadsOf)];
    }

    /// <summary>The classes of nodes and conductors.</summary>
    public WiringContext Context { get; }

    /// <summary>The wiring.</summary>
    public WiringNetwork Wiring => Context.Wiring;

    /// <summary>The machine.</summary>
    public MachineDesign Design => Context.Design;

    /// <summary>Every supply with what it reaches.</summary>
    public IReadOnlyList<SupplyReach> Supplies { get; }

    /// <summary>Loads of known current.</summary>
    public IReadOnlyList<Load> Loads { get; }

    /// <summary>True when a conductor carries mains.</summary>
    public bool IsMains(Conductor conductor) => Context.ClassOf(conductor) is NetClass.Line or NetClass.Neutral;

    /// <summary>Nodes that hang together with one through metal, contacts and switches, some elements left out.</summary>
    public IReadOnlySet<int> JoinedTo(int node, Func<NetworkElement, bool> leftOut) => _feeds.Joined(node, leftOut);

    /// <summary>The way of a load's current, from the supply to the load or back.</summary>
    internal ReadingPath? WayBetween(int from, int to) => new PathSearch(Wiring, _feeds.Carries).Shortest(from, to, _ => false);

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

    private static IEnumerable<Supply> Mains(WiringNetwork wiring)
    {
        if (wiring.Design.Mains is not { } mains)
            yield break;
        foreach (var (part, connector) in MainsInlets.Of(wiring.Design))
            if (MainsInlets.Find(part, connector, TerminalRole.Line) is { } line && MainsInlets.Find(part, connector, TerminalRole.Neutral) is { } neutral)
                yield return new Supply(
                    $"the mains at {part.Designation}",
                    wiring.LandingNode(line),
                    wiring.LandingNode(neutral),
                    mains.Voltage.Volts,
                    double.PositiveInfinity,
                    IsMains: true);
    }

    private IEnumerable<Supply> Sources() =>
        from part in Design.Parts
        from source in part.Type.Circuit.OfType<Source>()
        let plus = FindNode(part.Designation, source.A)
        let zero = FindNode(part.Designation, source.B)
        where plus is not null && zero is not null
        select new Supply(
            $"the {Number(source.Voltage.Volts)} V of {part.Designation}",
            plus.Value,
            zero.Value,
            source.Voltage.Volts,
            source.Limit?.Amperes ?? double.PositiveInfinity,
            IsMains: false);

    private IEnumerable<Load> LoadsOf(NetworkElement element)
    {
        if (element is not { Part: Resistor, IsMetal: false })
            yield break;
        foreach (var reach in Supplies)
            foreach (var (fed, returned) in new[] { (element.A, element.B), (element.B, element.A) })
                if (reach.Feeds(fed) && reach.Returns(returned) && !IsTurnable(reach, fed, returned) && reach.Supply.Volts / element.NominalOhms >= LeastLoadAmperes)
                    yield return new Load(element, reach, fed, returned);
    }

    // Contacts that turn polarity, taken as closed all together, join both poles: then nothing can be said.
    private static bool IsTurnable(SupplyReach reach, int fed, int returned) => reach.Feeds(returned) && reach.Returns(fed);
}
