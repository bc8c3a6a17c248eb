using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Says where an insulation test with 500 V may be done: line and neutral of an inlet, joined together, against its protective contact.</summary>
/// <remarks>
/// IEC 60204-1 clause 18.3: 500 V DC between the conductors of the power circuit and the protective circuit. Only where all that then stands at
/// 500 V bears mains, and nothing but insulation leads from it to anything else; where the wiring does not part them so, the test is not offered.
/// </remarks>
internal static class InsulationPairs
{
    /// <summary>The places: line, neutral, protective contact. With a control operated, only where it brings more of the machine under test.</summary>
    public static IEnumerable<(int Line, int Neutral, int Earth)> Of(WiringContext context, ElectricalSetUp setUp)
    {
        if (!setUp.State.PlugsApart || context.Design.Mains is not { } mains)
            yield break;
        var atRest = setUp.Operated is null ? null : Joined(context.Wiring, new MachineState(true, []));
        var joined = Joined(context.Wiring, setUp.State);
        foreach (var (part, connector) in MainsInlets.Of(context.Design))
        {
            if (NodeOf(TerminalRole.Line) is not { } line || NodeOf(TerminalRole.Neutral) is not { } neutral || NodeOf(TerminalRole.ProtectiveEarth) is not { } earth)
                continue;
            var live = Live(joined, line, neutral);
            if (!live.Contains(earth) && live.All(Bears) && (atRest is null || live.Count > Live(atRest, line, neutral).Count))
                yield return (line, neutral, earth);

            int? NodeOf(TerminalRole role) =>
                MainsInlets.Find(part, connector, role) is { } terminal && context.Design.FindTerminal(terminal)!.Reachable
                    ? context.Wiring.TerminalNode(terminal)
                    : null;
        }

        bool Bears(int node) =>
            context.Wiring.Nodes[node] is not { Kind: NodeKind.Terminal or NodeKind.PlugContact } at
            || (context.Design.FindTerminal(new TerminalReference(at.Subject, at.Place))!
                is { Role: TerminalRole.Line or TerminalRole.Neutral or TerminalRole.Passive, Voltage: { } rated }
                && rated >= mains.Voltage);
    }

    private static HashSet<int> Live(Islands joined, int line, int neutral) =>
        [.. joined.Members(joined.Of(line)), .. joined.Members(joined.Of(neutral))];

    // Whatever is not insulation may carry 500 V along: a junction either way, a port that differs from design to design.
    private static Islands Joined(WiringNetwork wiring, MachineState state) => new(
        wiring.Nodes.Count,
        wiring.Elements
            .Where(element => element.Part is not Insulation && StateNetwork.Conducts(wiring, state, element))
            .Select(element => (element.A, element.B)));
}
