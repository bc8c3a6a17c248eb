using System.Globalization;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What review rules ask of a design.</summary>
public sealed class ReviewContext
{
    // Below this a resistance is a sensor, a pull-up, a discharge resistor: no load that a conductor or fuse feels.
    private const double LeastLoadAmperes = 0.02;

    private readonly FeedNetwork _feeds;

    /// <summary>Makes the context of a wiring network.</summary>
    public ReviewContext(WiringNetwork wiring)
    {
        Context = new WiringContext(wiring);
        _feeds = new FeedNetwork(wiring, _ => false);
        Supplies = [.. Mains(wiring).Concat(Sources(wiring)).Select(supply => new SupplyReach(supply, _feeds))];
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
    public IReadOnlySet<int> JoinedTo(int node, Func<NetworkElement, bool> leftOut) => new FeedNetwork(Wiring, leftOut).Joined(node);

    /// <summary>The way of a load's current, from the supply to the load or back.</summary>
    internal ReadingPath? WayBetween(int from, int to) => new PathSearch(Wiring, _feeds.Carries).Shortest(from, to, _ => false);

    /// <summary>Every voltage that reaches a node with all jumpers pulled.</summary>
    public IReadOnlyList<Supply> SuppliesAtPost(int node)
    {
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

    private static IEnumerable<Supply> Sources(WiringNetwork wiring) =>
        from part in wiring.Design.Parts
        from source in part.Type.Circuit.OfType<Source>()
        select new Supply(
            $"the {Number(source.Voltage.Volts)} V of {part.Designation}",
            wiring.PartNode(part.Designation, source.A),
            wiring.PartNode(part.Designation, source.B),
            source.Voltage.Volts,
            source.Limit?.Amperes ?? double.PositiveInfinity,
            IsMains: false);

    private IEnumerable<Load> LoadsOf(NetworkElement element)
    {
        if (element is not { Part: Resistor, IsMetal: false })
            yield break;
        foreach (var reach in Supplies)
            foreach (var (fed, returned) in new[] { (element.A, element.B), (element.B, element.A) })
                if (reach.Feeds(fed) && reach.Returns(returned) && reach.Supply.Volts / element.NominalOhms >= LeastLoadAmperes)
                    yield return new Load(element, reach, fed, returned);
    }
}
