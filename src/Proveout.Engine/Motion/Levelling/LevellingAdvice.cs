namespace Proveout.Engine.Motion;

/// <summary>How to level a plate.</summary>
/// <param name="LeastSquares">Moves that leave the least sum of squares.</param>
/// <param name="Minimax">Moves that leave the smallest greatest deviation.</param>
/// <param name="LeftByLeastSquares">Highest less lowest point after the first, in mm.</param>
/// <param name="LeftByMinimax">Highest less lowest point after the second, in mm.</param>
/// <param name="BendsPlate">True when more than three supports take a twist out by bending the plate.</param>
public sealed record LevellingAdvice(
    IReadOnlyList<SupportMove> LeastSquares, IReadOnlyList<SupportMove> Minimax, double LeftByLeastSquares, double LeftByMinimax, bool BendsPlate)
{
    /// <summary>With two supports: rise across the line that joins them, over the width of the points, in mm, which they cannot take away; null with more.</summary>
    public Uncertain? TiltAcross { get; init; }
}
