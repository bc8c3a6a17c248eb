namespace Proveout.Engine.Electrical;

/// <summary>The junctions and the insulation that touch each piece of a network.</summary>
/// <param name="leakageSiemens">For each piece, the conductance of all insulation that touches it.</param>
/// <param name="rootOf">For each piece, the piece that stands for all that junctions join.</param>
/// <param name="leastVolts">For each piece, the lowest forward voltage of the junctions that touch it; infinite when none does.</param>
internal sealed class StrayPieces(double[] leakageSiemens, int[] rootOf, double[] leastVolts)
{
    /// <summary>Resistance below which neither insulation nor junctions can alter what a meter shows, in ohms.</summary>
    public const double NegligibleOhms = 1;

    /// <summary>The lower limit of a reading in ohms, given that of the resistances alone.</summary>
    /// <param name="lowOhms">What the resistances alone leave.</param>
    /// <param name="pieceOfA">The piece that one lead is on.</param>
    /// <param name="pieceOfB">The piece that the other is on.</param>
    public double LowerLimit(double lowOhms, int pieceOfA, int pieceOfB) =>
        lowOhms < NegligibleOhms ? lowOhms : Math.Min(WithLeakage(lowOhms, pieceOfA, pieceOfB), JunctionOhms(pieceOfA, pieceOfB));

    /// <summary>The lower limit of a reading in ohms when only insulation lies beside the resistances.</summary>
    public double WithLeakage(double lowOhms, int pieceOfA, int pieceOfB) =>
        1 / ((1 / lowOhms) + Math.Min(leakageSiemens[pieceOfA], leakageSiemens[pieceOfB]));

    // From one piece to another the current passes a junction of each.
    private double JunctionOhms(int pieceOfA, int pieceOfB) =>
        rootOf[pieceOfA] == rootOf[pieceOfB]
            ? Math.Max(leastVolts[pieceOfA], leastVolts[pieceOfB]) / ElementBand.TestCurrentAmperes
            : double.PositiveInfinity;
}
