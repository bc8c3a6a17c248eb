namespace Proveout.Engine.Motion;

/// <summary>What to do at a support.</summary>
/// <param name="Support">Which.</param>
/// <param name="Raise">By how much to raise the plate there, in mm; negative to lower it.</param>
/// <param name="IsLeft">True for the one to leave as it is.</param>
public sealed record SupportMove(Support Support, Uncertain Raise, bool IsLeft)
{
    /// <summary>True when the move is not surely other than none (coverage factor 2): leave it.</summary>
    public bool IsWithinUncertainty => Math.Abs(Raise.Value) <= Raise.Expanded;
}
