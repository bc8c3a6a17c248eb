namespace Proveout.Engine.Electrical;

/// <summary>A plug without a key sits one pin off.</summary>
internal sealed class PlugShifted : IWiringFaultRule
{
    public string Kind => "plug-shifted";

    public string Words => "plugs without a key, one pin off";

    public double Prior => Priors.PlugShifted;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from plug in Mismating.UnkeyedPlugs(context)
        where plug.Contacts.Length > 1
        from step in new[] { 1, -1 }
        let mismating = Mismating.Of(context, plug.Contacts, place => place + step)
        where mismating.Changes.Length > 0
        select WiringContext.Fault(
            this,
            $"{plug.Part.Designation}:{plug.Connector.Name}:{step}",
            $"The plug of {plug.Connector.Name} on {plug.Part.Designation} sits one pin off, towards {(step > 0 ? plug.Contacts[^1] : plug.Contacts[0]).Terminal}.",
            [plug.Part.Designation, plug.Connector.Name],
            mismating.Consequence,
            "Eye: no pin stands free at either end of the plug.",
            mismating.Changes);
}
