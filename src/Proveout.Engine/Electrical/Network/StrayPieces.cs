namespace Proveout.Engine.Electrical;

/// <summary>The junctions and the insulation that touch each piece of a network.</summary>
/// <param name="pieceOf">The piece that a node is in.</param>
/// <param name="leakageSiemens">For each piece, the conductance of all insulation that touches it.</param>
/// <param name="rootOf">For each piece, the piece that stands for all that junctions join.</param>
/// <param name="leastVolts">For each piece, the lowest forward voltage of the junctions that touch it; infinite when none does.</param>
internal sealed class StrayPieces(Func<int, int> pieceOf, double[] leakageSiemens, int[] rootOf, double[] leastVolts)
{
    /// <summary>Resistance below which neither insulation nor junctions can alter what a meter shows, in ohms.</summary>
    public const double NegligibleOhms = 1;

    /// <summary>The lower limit of a reading in ohms, given that of the resistances alone.</summary>
    public double LowerLimit(double lowOhms, int a, int b) =>
        lowOhms < NegligibleOhms ? lowOhms : Math.Min(WithLeakage(lowOhms, a, b), JunctionOhms(a, b));

    /// <summary>The lower limit of a reading in ohms when only insulation lies beside the resistances.</summary>
    public double WithLeakage(double lowOhms, int a, int b)
    {
        var (ofA, ofB) = (leakageSiemens[pieceOf(a)], leakageSiemens[pieceOf(b)]);
        return 1 / ((1 / lowOhms) + Math.Min(ofA, ofB));
    }

    // From one piece to another the current passes a junction of each.
    private double JunctionOhms(int a, int b) =>
        rootOf[pieceOf(a)] == rootOf[pieceOf(b)]
            ? Math.Max(leastVolts[pieceOf(a)], leastVolts[pieceOf(b)]) / ElementBand.TestCurrentAmperes
            : double.PositiveInfinity;
}
