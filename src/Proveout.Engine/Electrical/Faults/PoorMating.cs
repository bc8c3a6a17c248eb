namespace Proveout.Engine.Electrical;

/// <summary>A plug's contact is worn, bent or dirty and touches its pin badly.</summary>
internal sealed class PoorMating : IWiringFaultRule
{
    private const double LowOhms = 2;
    private const double HighOhms = 50;

    public string Kind => "poor-mating";

    public string Words => "plug contacts that touch badly";

    public double Prior => Priors.PoorMating;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from terminal in PlugContacts.Wired(context)
        select WiringContext.Fault(
            this,
            terminal.ToString(),
            $"The plug's contact {terminal.Terminal} at {terminal.Part} touches its pin badly.",
            [terminal.Part, .. context.ConductorsAt(terminal).Select(conductor => conductor.Id)],
            context.OfOpening(context.ConductorsAt(terminal).First(), poorOnly: true),
            "Hand: wiggle the plug while reading; no brown plastic after the first hours.",
            new AddInSeries(context.MatingOf(terminal).Index, LowOhms, HighOhms));
}
