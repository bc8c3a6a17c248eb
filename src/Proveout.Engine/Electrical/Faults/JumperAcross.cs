using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A jumper joins two outer posts instead of the common one and its own, and with them two supplies.</summary>
internal sealed class JumperAcross : IWiringFaultRule
{
    public string Kind => "jumper-across";

    public string Words => "jumpers across the wrong two posts";

    public double Prior => Priors.JumperAcross;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from element in context.Wiring.Elements
        where element.Kind == ElementKind.Jumper
        let jumper = context.Design.FindPart(element.Subject)!.Type.Jumpers.First(candidate => candidate.Name == element.Name)
        from pair in jumper.Positions.Zip(jumper.Positions.Skip(1))
        let a = context.FindNode(element.Subject, pair.First.Post)
        let b = context.FindNode(element.Subject, pair.Second.Post)
        where a is not null && b is not null && a != b
        select WiringContext.Fault(
            this,
            $"{element.Subject}.{element.Name}:{pair.First.Name}:{pair.Second.Name}",
            $"Jumper {element.Name} of {element.Subject} joins the posts of {pair.First.Name} and {pair.Second.Name}.",
            [element.Subject],
            new Consequence(Severity.Damage, "Two supplies are joined: the lower one is destroyed."),
            "Eye: jumper map with a photograph; ohms between the selector's outer posts.",
            new Cut(element.Index),
            new Join(a.Value, b.Value, element.LowOhms, element.HighOhms));
}
