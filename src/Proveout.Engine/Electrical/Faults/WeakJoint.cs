namespace Proveout.Engine.Electrical;

/// <summary>A joint with some tenths of an ohm: a screw half tight, a clamp on a few strands. Four wires may see it, two may not.</summary>
internal sealed class WeakJoint() : ResistiveJoint(0.05, 2, "weak", "Tug every conductor, check the torque; voltage drop at 1 A below 5 mV across the joint, warmth under load.")
{
    public override string Kind => "weak-joint";

    public override string Words => "weak joints of 0.05 to two ohms";

    public override double Prior => Priors.WeakJoint;
}
