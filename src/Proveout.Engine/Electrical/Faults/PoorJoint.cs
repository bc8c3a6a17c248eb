namespace Proveout.Engine.Electrical;

/// <summary>A joint with a few ohms: a loose screw, insulation under the clamp, a weak crimp.</summary>
/// <remarks>Below about two ohms a hand-held meter cannot surely tell a poor joint from its own leads; those are left to <see cref="WeakJoint"/>.</remarks>
internal sealed class PoorJoint() : ResistiveJoint(2, 10, "poor", "Tug every conductor, check the torque; voltage drop or warmth under load.")
{
    public override string Kind => "poor-joint";

    public override string Words => "poor joints of two ohms or more";

    public override double Prior => Priors.PoorJoint;
}
