using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A jumper is fitted that the design leaves out: a start-up jumper left in, a terminator too many.</summary>
internal sealed class JumperExtra : IWiringFaultRule
{
    public string Kind => "jumper-extra";

    public string Words => "jumpers that should not be there";

    public double Prior => Priors.JumperExtra;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from jumper in part.Type.Jumpers
        where part.Jumpers.All(setting => setting.Jumper != jumper.Name)
        from position in jumper.Positions
        let common = context.FindNode(part.Designation, jumper.Common)
        let post = context.FindNode(part.Designation, position.Post)
        where common is not null && post is not null && common != post
        select WiringContext.Fault(
            this,
            $"{part.Designation}.{jumper.Name}:{position.Name}",
            $"Jumper {jumper.Name} of {part.Designation} is fitted at {position.Name}; the design leaves it out.",
            [part.Designation],
            new Consequence(Severity.DoesNotWork, "The board starts in another mode, or a line has one terminator too many."),
            "Eye: jumper map with a photograph.",
            new Join(common.Value, post.Value, JointBands.Jumper.Low, JointBands.Jumper.High));
}
