namespace Proveout.Engine.Electrical;

/// <summary>The junctions and the insulation that touch each piece of a network.</summary>
/// <param name="leakageSiemens">For each piece, the conductance of all insulation that touches it.</param>
/// <param name="rootOf">For each piece, the piece that stands for all that junctions and insulation join.</param>
/// <param name="leastVolts">For each piece, the lowest forward voltage of the junctions that touch it; infinite when none does.</param>
/// <param name="ways">Least sum of forward voltages on the ways from one piece to another that pass a junction.</param>
internal sealed class StrayPieces(double[] leakageSiemens, int[] rootOf, double[] leastVolts, Func<int, int, double> ways)
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

    /// <summary>The least ohms that what touches the piece of one lead leaves.</summary>
    /// <remarks>All current leaves the piece of one lead, and enters that of the other, by what touches it: insulation, and junctions once they conduct.</remarks>
    public double LeastOhms(double lowOhms, int piece) =>
        Math.Min(1 / ((1 / lowOhms) + leakageSiemens[piece]), leastVolts[piece] / ElementBand.TestCurrentAmperes);

    /// <summary>The least volts that a current takes to run from red to black, whatever junctions and insulation do; infinite when over range.</summary>
    /// <remarks>
    /// Without a junction that conducts the current runs through resistance and insulation; with one the port holds the lowest forward voltage that
    /// touches the piece of either lead. Where the leads are on two pieces, either insulation takes the whole current or a part of it runs along a
    /// way that passes junctions, each at its forward voltage.
    /// </remarks>
    /// <param name="lowOhms">What the resistances alone leave.</param>
    /// <param name="red">The piece that the red lead is on.</param>
    /// <param name="black">The piece that the black lead is on.</param>
    /// <param name="amperes">The current.</param>
    public double LeastVolts(double lowOhms, int red, int black, double amperes)
    {
        if (rootOf[red] != rootOf[black])
            return double.PositiveInfinity;
        var touching = Math.Max(LeastVolts(lowOhms, red, amperes), LeastVolts(lowOhms, black, amperes));
        if (red == black)
            return touching;
        var byInsulation = amperes / Math.Min(leakageSiemens[red], leakageSiemens[black]);
        return Math.Max(touching, Math.Min(byInsulation, ways(red, black)));
    }

    private double LeastVolts(double lowOhms, int piece, double amperes) =>
        Math.Min(amperes / ((1 / lowOhms) + leakageSiemens[piece]), leastVolts[piece]);

    /// <summary>The piece that stands for all that junctions and insulation join to a piece.</summary>
    public int RootOf(int piece) => rootOf[piece];

    /// <summary>True when junctions or insulation lead from one piece to another, by way of others too.</summary>
    public bool AreJoined(int one, int other) => rootOf[one] == rootOf[other];

    /// <summary>Conductance in siemens of all insulation that touches a piece.</summary>
    public double LeakageOf(int piece) => leakageSiemens[piece];

    /// <summary>Lowest forward voltage of the junctions that touch a piece; infinite when none does.</summary>
    public double LeastVoltsOf(int piece) => leastVolts[piece];

    /// <summary>True when a junction touches the piece of either lead.</summary>
    public bool AreNearJunctions(int pieceOfA, int pieceOfB) => double.IsFinite(leastVolts[pieceOfA]) || double.IsFinite(leastVolts[pieceOfB]);

    /// <summary>Least sum of forward voltages on the ways from one piece to another that pass a junction.</summary>
    public double WayVolts(int red, int black) => ways(red, black);
}
