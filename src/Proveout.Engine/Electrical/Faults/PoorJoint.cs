using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>A joint with a few ohms: a loose screw, insulation under the clamp, a weak crimp.</summary>
internal sealed class PoorJoint : IWiringFaultRule
{
    // Below about two ohms a hand-held meter cannot surely tell a poor joint from its own leads; those are left to tug, torque and voltage drop.
    private const double LowOhms = 2;
    private const double HighOhms = 10;

    public string Kind => "poor-joint";

    public string Words => "poor joints of two ohms or more";

    public double Prior => Priors.PoorJoint;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from conductor in context.Design.Conductors
        from terminal in new[] { conductor.From, conductor.To }
        select OneEnd(context, conductor, terminal);

    private WiringFault OneEnd(WiringContext context, Conductor conductor, TerminalReference terminal) => WiringContext.Fault(
        this,
        $"{conductor.Id}:{terminal}",
        $"The joint of {WiringContext.Name(conductor)} at {terminal} is poor.",
        [conductor.Id, terminal.Part],
        context.OfOpening(conductor, poorOnly: true),
        "Tug every conductor, check the torque; voltage drop or warmth under load.",
        new AddInSeries(context.JointOf(conductor, terminal).Index, LowOhms, HighOhms));
}
