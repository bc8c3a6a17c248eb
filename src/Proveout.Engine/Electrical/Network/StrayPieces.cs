namespace Proveout.Engine.Electrical;

/// <summary>The junctions and the insulation that touch each piece of a network.</summary>
/// <param name="leakageSiemens">For each piece, the conductance of all insulation that touches it.</param>
/// <param name="rootOf">For each piece, the piece that stands for all that junctions and insulation join.</param>
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
        lowOhms < NegligibleOhms || rootOf[pieceOfA] != rootOf[pieceOfB]
            ? lowOhms
            : Math.Max(LeastOhms(lowOhms, pieceOfA), LeastOhms(lowOhms, pieceOfB));

    /// <summary>The lower limit of a reading in ohms when only insulation lies beside the resistances.</summary>
    public double WithLeakage(double lowOhms, int pieceOfA, int pieceOfB) =>
        1 / ((1 / lowOhms) + Math.Min(leakageSiemens[pieceOfA], leakageSiemens[pieceOfB]));

    // All current leaves the piece of one lead, and enters that of the other, by what touches it: insulation, and junctions once they conduct.
    private double LeastOhms(double lowOhms, int piece) =>
        Math.Min(1 / ((1 / lowOhms) + leakageSiemens[piece]), leastVolts[piece] / ElementBand.TestCurrentAmperes);
}
