namespace Proveout.Engine.Electrical;

/// <summary>The least that junctions and insulation can leave of a resistance, wherever in the machine they lie.</summary>
internal sealed class StrayBound(StrayPaths strays)
{
    private const double Rounding = 1e-9;

    private readonly double _allSiemens = strays.Insulation.Sum(item => item.Siemens);
    private readonly double _leastVolts = strays.Junctions.Select(item => item.ForwardVolts).Append(double.PositiveInfinity).Min();

    /// <summary>A value that the lower limit of a reading does not fall below, given that of the resistances alone, in ohms.</summary>
    public double LeastOhms(double lowOhms) => lowOhms < StrayPieces.NegligibleOhms
        ? Math.Min(lowOhms, Beside(StrayPieces.NegligibleOhms))
        : Beside(lowOhms);

    /// <summary>The same for a port whose one lead is on an island of its own that consists of some nodes.</summary>
    public double LeastOpenOhms(Func<int, bool> isInside) =>
        Math.Min(1 / SiemensAt(isInside), VoltsAt(isInside) / ElementBand.TestCurrentAmperes);

    /// <summary>The least volts that a current takes to leave an island that consists of some nodes.</summary>
    public double LeastOpenVolts(Func<int, bool> isInside, double amperes) => Math.Min(amperes / SiemensAt(isInside), VoltsAt(isInside));

    /// <summary>The most that resistances may conduct so that the lower limit of a reading surely is at least some ohms; none when negative.</summary>
    public double MostSiemensFor(double leastOhms) => (1 / leastOhms) - (_allSiemens * (1 + Rounding)) - (Rounding / leastOhms);

    private double SiemensAt(Func<int, bool> isInside) => strays.Insulation.Where(item => isInside(item.A) || isInside(item.B)).Sum(item => item.Siemens);

    private double VoltsAt(Func<int, bool> isInside) =>
        strays.Junctions.Where(item => isInside(item.Anode) || isInside(item.Cathode)).Select(item => item.ForwardVolts).Append(double.PositiveInfinity).Min();

    private double Beside(double ohms) => Math.Min(1 / ((1 / ohms) + _allSiemens), _leastVolts / ElementBand.TestCurrentAmperes);
}
