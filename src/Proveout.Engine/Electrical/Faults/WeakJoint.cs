using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A joint with some tenths of an ohm: a screw half tight, a clamp on a few strands. Four wires may see it, two may not.</summary>
internal sealed class WeakJoint : IWiringFaultRule
{
    private const double LowOhms = 0.05;
    private const double HighOhms = 2;

    public string Kind => "weak-joint";

    public string Words => "weak joints of 0.05 to two ohms";

    public double Prior => Priors.WeakJoint;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from conductor in context.Design.Conductors
        from terminal in new[] { conductor.From, conductor.To }
        select OneEnd(context, conductor, terminal);

    private WiringFault OneEnd(WiringContext context, Conductor conductor, TerminalReference terminal) => WiringContext.Fault(
        this,
        $"{conductor.Id}:{terminal}",
        $"The joint of {WiringContext.Name(conductor)} at {terminal} is weak.",
        [conductor.Id, terminal.Part],
        context.OfOpening(conductor, poorOnly: true),
        "Tug every conductor, check the torque; voltage drop at 1 A below 5 mV across the joint, warmth under load.",
        new AddInSeries(context.JointOf(conductor, terminal).Index, LowOhms, HighOhms));
}
