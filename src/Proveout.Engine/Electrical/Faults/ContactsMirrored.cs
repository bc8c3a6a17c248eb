using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A plug is wired as seen from its face instead of from the wire side: the first contact has the last conductor, and so on.</summary>
internal sealed class ContactsMirrored : IWiringFaultRule
{
    private const int FewestContacts = 3;

    public string Kind => "contacts-mirrored";

    public string Words => "plugs wired in mirror image";

    public double Prior => Priors.ContactsMirrored;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from connector in part.Type.Connectors
        where connector.Pluggable && connector.Terminals.Count >= FewestContacts
        let terminals = connector.Terminals.Select(name => new TerminalReference(part.Designation, name)).ToArray()
        let mirrored = Rearrangement.Of(context, terminals, terminal => terminals[^(Array.IndexOf(terminals, terminal) + 1)])
        where mirrored.Conductors.Skip(1).Any() && mirrored.ChangesSomething(context)
        select WiringContext.Fault(
            this,
            $"{part.Designation}:{connector.Name}",
            $"The plug of {connector.Name} on {part.Designation} is wired in mirror image: what belongs on {connector.Terminals[0]} sits on {connector.Terminals[^1]}, and so on.",
            [part.Designation, connector.Name, .. mirrored.Conductors],
            mirrored.Consequence(context),
            "Eye: contact 1 of the plug, seen from the wire side, against the drawing.",
            mirrored.Changes(context));
}
