using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Says where an insulation test with 500 V may be done: line and neutral of an inlet, joined together, against its protective contact.</summary>
/// <remarks>
/// IEC 60204-1 clause 18.3: 500 V DC between the conductors of the power circuit and the protective circuit. Only where all that then stands at
/// 500 V bears mains, and nothing but insulation leads from it to anything else; where the wiring does not part them so, the test is not offered.
/// </remarks>
/// <param name="context">The wiring.</param>
internal sealed class InsulationPairs(WiringContext context)
{
    private readonly Lazy<Inlet[]> _inlets = new(() => [.. InletsOf(context)]);

    /// <summary>The places: line, neutral, protective contact. With a control operated, only where it brings more of the machine under test.</summary>
    public IEnumerable<(int Line, int Neutral, int Earth)> Of(ElectricalSetUp setUp)
    {
        if (!setUp.State.PlugsApart || context.Design.Mains is not { } mains)
            yield break;
        foreach (var inlet in _inlets.Value)
        {
            if (setUp.Operated is { } operated && !BringsMore(operated, setUp.State, inlet.LiveAtRest))
                continue;
            var live = setUp.Operated is null ? inlet.LiveAtRest : Live(Joined(context.Wiring, setUp.State), inlet.Line, inlet.Neutral);
            if (!live.Contains(inlet.Earth) && (setUp.Operated is null || live.Count > inlet.LiveAtRest.Count) && live.All(node => Bears(node, mains)))
                yield return (inlet.Line, inlet.Neutral, inlet.Earth);
        }
    }

    private static IEnumerable<Inlet> InletsOf(WiringContext context)
    {
        var joined = Joined(context.Wiring, new MachineState(true, []));
        foreach (var (part, connector) in MainsInlets.Of(context.Design))
        {
            if (NodeOf(TerminalRole.Line) is { } line && NodeOf(TerminalRole.Neutral) is { } neutral && NodeOf(TerminalRole.ProtectiveEarth) is { } earth)
                yield return new Inlet(line, neutral, earth, Live(joined, line, neutral));

            int? NodeOf(TerminalRole role) =>
                MainsInlets.Find(part, connector, role) is { } terminal && context.Design.FindTerminal(terminal)!.Reachable
                    ? context.Wiring.TerminalNode(terminal)
                    : null;
        }
    }

    // Only a contact that closes, and ends on what is live already, can make more of it live.
    private bool BringsMore(OperatedControl operated, MachineState state, HashSet<int> atRest) =>
        operated.ContactsIn(context.Wiring).Any(contact => (atRest.Contains(contact.A) || atRest.Contains(contact.B)) && StateNetwork.Conducts(context.Wiring, state, contact));

    private bool Bears(int node, MainsSupply mains) =>
        context.Wiring.Nodes[node] is not { Kind: NodeKind.Terminal or NodeKind.PlugContact } at
        || (context.Design.FindTerminal(new TerminalReference(at.Subject, at.Place))!
            is { Role: TerminalRole.Line or TerminalRole.Neutral or TerminalRole.Passive, Voltage: { } rated }
            && rated >= mains.Voltage);

    private static HashSet<int> Live(Islands joined, int line, int neutral) =>
        [.. joined.Members(joined.Of(line)), .. joined.Members(joined.Of(neutral))];

    // Whatever is not insulation may carry 500 V along: a junction either way, a port that differs from design to design.
    private static Islands Joined(WiringNetwork wiring, MachineState state) => new(
        wiring.Nodes.Count,
        wiring.Elements
            .Where(element => element.Part is not Insulation && StateNetwork.Conducts(wiring, state, element))
            .Select(element => (element.A, element.B)));

    // An inlet with the nodes that stand at 500 V while all controls are at rest.
    private sealed record Inlet(int Line, int Neutral, int Earth, HashSet<int> LiveAtRest);
}
