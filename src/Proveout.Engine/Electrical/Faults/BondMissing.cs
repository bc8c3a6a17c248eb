using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A protective or bonding conductor is not there, or makes no contact (paint, anodic layer).</summary>
internal sealed class BondMissing : IWiringFaultRule
{
    public string Kind => "bond-missing";

    public string Words => "protective conductors missing or without contact";

    public double Prior => Priors.BondMissing;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from conductor in context.Design.Conductors
        where context.ClassOf(conductor) == NetClass.ProtectiveEarth
        select WiringContext.Fault(
            this,
            conductor.Id,
            $"Protective conductor {conductor.Id} from {conductor.From} to {conductor.To} is missing or makes no contact.",
            [conductor.Id, conductor.From.Part, conductor.To.Part],
            new Consequence(Severity.Shock, "Metal that a person touches is not bonded: an insulation fault leaves it live."),
            "Eye and tug: bare metal under the lug, toothed washer, screw tight; measure with the parallel metal path taken away.",
            new Cut(context.CopperOf(conductor).Index));
}
