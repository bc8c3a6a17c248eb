namespace Proveout.Engine.Electrical;

/// <summary>A conductor, other than a protective one, is not there, or is broken inside.</summary>
internal sealed class ConductorMissing : IWiringFaultRule
{
    public string Kind => "conductor-missing";

    public string Words => "conductors missing or broken";

    public double Prior => Priors.ConductorMissing;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from conductor in context.Design.Conductors
        where context.ClassOf(conductor) != NetClass.ProtectiveEarth
        select WiringContext.Fault(
            this,
            conductor.Id,
            $"Conductor {WiringContext.Name(conductor)} from {conductor.From} to {conductor.To} is missing or broken.",
            [conductor.Id, conductor.From.Part, conductor.To.Part],
            context.OfOpening(conductor, poorOnly: false),
            "Eye: count the conductors at both terminals against the wire list.",
            new Cut(context.CopperOf(conductor).Index));
}
