namespace Proveout.Engine.Electrical;

/// <summary>A joint with more resistance than metal on metal has, at either end of every conductor; how much more tells the kinds apart.</summary>
/// <param name="lowOhms">Least resistance that it adds.</param>
/// <param name="highOhms">Most resistance that it adds.</param>
/// <param name="how">What such a joint is called, such as <c>poor</c>.</param>
/// <param name="otherEvidence">What shows it where no reading does.</param>
internal abstract class ResistiveJoint(double lowOhms, double highOhms, string how, string otherEvidence) : IWiringFaultRule
{
    public abstract string Kind { get; }

    public abstract string Words { get; }

    public abstract double Prior { get; }

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from conductor in context.Design.Conductors
        from terminal in new[] { conductor.From, conductor.To }
        select WiringContext.Fault(
            this,
            $"{conductor.Id}:{terminal}",
            $"The joint of {WiringContext.Name(conductor)} at {terminal} is {how}.",
            [conductor.Id, terminal.Part],
            context.OfOpening(conductor, poorOnly: true),
            otherEvidence,
            new AddInSeries(context.JointOf(conductor, terminal).Index, lowOhms, highOhms));
}
