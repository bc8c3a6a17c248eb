namespace Proveout.Engine.Electrical;

/// <summary>A contact was not latched in its housing and is pushed back when the plug goes in.</summary>
internal sealed class ContactPushedBack : IWiringFaultRule
{
    public string Kind => "contact-pushed-back";

    public string Words => "plug contacts pushed back on mating";

    public double Prior => Priors.ContactPushedBack;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from terminal in PlugContacts.Wired(context)
        select WiringContext.Fault(
            this,
            terminal.ToString(),
            $"The plug's contact {terminal.Terminal} at {terminal.Part} is pushed back: it makes no contact when the plug is in.",
            [terminal.Part, .. context.ConductorsAt(terminal).Select(conductor => conductor.Id)],
            context.OfOpening(context.ConductorsAt(terminal).First(), poorOnly: false),
            "Tug: pull each wire lightly towards the wire side; all contacts level with the plug's face.",
            new Cut(context.MatingOf(terminal).Index));
}
