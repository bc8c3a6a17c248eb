using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A plug whose contacts meet other pins than their own.</summary>
/// <param name="Changes">What it does to the network.</param>
/// <param name="Consequence">The worst that follows.</param>
internal sealed record Mismating(ElementChange[] Changes, Consequence Consequence)
{
    /// <summary>Plugs that nothing keeps from going in off by one or turned round: pin headers and ribbon plugs; common practice.</summary>
    public static IEnumerable<(Part Part, TerminalReference[] Contacts, Connector Connector)> UnkeyedPlugs(WiringContext context) =>
        from part in context.Design.Parts
        from connector in part.Type.Connectors
        where connector.Pluggable && (connector.Family.StartsWith("header", StringComparison.Ordinal) || connector.Family.StartsWith("ribbon", StringComparison.Ordinal))
        let contacts = connector.Terminals.Select(name => new TerminalReference(part.Designation, name)).ToArray()
        where contacts.Any(context.IsWired)
        select (part, contacts, connector);

    /// <summary>Each contact meets the pin at another place of the row; one beyond its end meets nothing.</summary>
    public static Mismating Of(WiringContext context, TerminalReference[] contacts, Func<int, int> placeOfPin)
    {
        var changes = new List<ElementChange>();
        var worst = ConsequenceRules.Nothing;
        for (var place = 0; place < contacts.Length; place++)
        {
            var pin = placeOfPin(place);
            if (pin == place || !context.IsWired(contacts[place]))
                continue;
            var mating = context.MatingOf(contacts[place]);
            changes.Add(new Cut(mating.Index));
            if (pin < 0 || pin >= contacts.Length)
                continue;
            changes.Add(new Join(mating.A, context.Wiring.TerminalNode(contacts[pin]), mating.LowOhms, mating.HighOhms, ByPlug: true));
            worst = Electrical.Consequence.Worse(worst, context.OfJoining(context.Wiring.TerminalNode(contacts[place]), context.Wiring.TerminalNode(contacts[pin])));
        }

        return new Mismating([.. changes], worst);
    }
}
