namespace Proveout.Engine.Electrical;

/// <summary>A plug without a key is turned round.</summary>
internal sealed class PlugReversed : IWiringFaultRule
{
    public string Kind => "plug-reversed";

    public string Words => "plugs without a key, turned round";

    public double Prior => Priors.PlugReversed;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from plug in Mismating.UnkeyedPlugs(context)
        where plug.Contacts.Length > 1
        let mismating = Mismating.Of(context, plug.Contacts, place => plug.Contacts.Length - 1 - place)
        where mismating.Changes.Length > 0
        select WiringContext.Fault(
            this,
            $"{plug.Part.Designation}:{plug.Connector.Name}",
            $"The plug of {plug.Connector.Name} on {plug.Part.Designation} is turned round.",
            [plug.Part.Designation, plug.Connector.Name],
            mismating.Consequence,
            "Eye: the mark of contact 1 on the plug beside pin 1 of the socket.",
            mismating.Changes);
}
