namespace Proveout.Engine.Motion;

/// <summary>What a trial turn of a screw taught: needs no data of the belt, and frame and shafts are in it.</summary>
/// <param name="BeforeNewtons">Force before.</param>
/// <param name="AfterNewtons">Force after.</param>
/// <param name="Turns">Turns between; tighter is positive.</param>
public sealed record TensionerTrial(Uncertain BeforeNewtons, Uncertain AfterNewtons, double Turns)
{
    /// <summary>Force for each turn; null when the change does not stand out of its uncertainty or has the wrong sign.</summary>
    public Uncertain? NewtonsByTurn
    {
        get
        {
            // What mass and span are off by moves both forces alike, so the independent sum is on the safe side.
            var change = new Uncertain((AfterNewtons.Value - BeforeNewtons.Value) / Turns, Uncertain.Combine(AfterNewtons.Standard, BeforeNewtons.Standard) / Math.Abs(Turns));
            return double.IsFinite(change.Value) && change.Value > change.Expanded ? change : null;
        }
    }

    /// <summary>Turns from the force after the trial to another; null when the trial taught nothing.</summary>
    public double? TurnsTo(double newtons) => NewtonsByTurn is { } step ? (newtons - AfterNewtons.Value) / step.Value : null;
}
