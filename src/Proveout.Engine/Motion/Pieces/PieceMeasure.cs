namespace Proveout.Engine.Motion;

/// <summary>A length of the test piece between two parallel sides.</summary>
/// <param name="Number">Its number on the drawing.</param>
/// <param name="Words">What to measure.</param>
/// <param name="Grip">How the calliper takes it.</param>
/// <param name="Growth">What lengthens or shortens it besides scale.</param>
/// <param name="Facing">Direction square to the sides, of length 1, as designed.</param>
/// <param name="NominalMm">The length as designed.</param>
/// <param name="From">Where it is taken on one side, in the plane of its part.</param>
/// <param name="To">Where on the other.</param>
public sealed record PieceMeasure(
    int Number, string Words, PieceGrip Grip, PieceGrowth Growth, SpaceVector Facing, double NominalMm, (double Across, double Up) From, (double Across, double Up) To)
{
    /// <summary>1 when growth lengthens it, -1 when growth shortens it.</summary>
    public int GrowthSign => Grip == PieceGrip.Outside ? 1 : -1;
}
