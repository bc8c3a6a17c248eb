using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>What a fault current may heat in a conductor before it is interrupted: IEC 60364-5-54 clause 543.1.2 and annex A.</summary>
public static class Adiabatic
{
    // Copper: volumetric heat capacity in J/(K·mm³), reciprocal of the temperature coefficient at 0 °C in °C, resistivity at 20 °C in Ω·mm (annex A).
    private const double HeatCapacity = 3.45e-3;
    private const double Beta = 234.5;
    private const double Resistivity = 17.241e-6;

    /// <summary>k for PVC from 70 °C to 160 °C in A·√s/mm².</summary>
    public static double PvcCore { get; } = Factor(70, 160);

    /// <summary>k in A·√s/mm² between two temperatures in °C.</summary>
    public static double Factor(double from, double to) =>
        Math.Sqrt(HeatCapacity * (Beta + 20) / Resistivity * Math.Log((Beta + to) / (Beta + from)));

    /// <summary>Least cross-section in mm² that bears an energy: S = √(I²t)/k, for five seconds at most.</summary>
    /// <param name="ampereSquaredSeconds">I²t in A²s.</param>
    /// <param name="factor">k in A·√s/mm².</param>
    public static double LeastSquareMillimetres(double ampereSquaredSeconds, double factor) => Math.Sqrt(ampereSquaredSeconds) / factor;

    /// <summary>Most that a device lets through in A²s, over all currents that it interrupts within five seconds, up to a fault current.</summary>
    /// <remarks>By the slow edge of its characteristic at the points that its standard fixes.</remarks>
    public static double LetThrough(FuseCurve curve, double ratedAmperes, double faultAmperes)
    {
        double[] multiples = [1.5, 2, 2.1, 2.55, 2.75, 3.5, 4, 5, 6, 10];
        return multiples
            .Where(multiple => multiple * ratedAmperes <= faultAmperes)
            .Select(multiple => (Amperes: multiple * ratedAmperes, Seconds: TripCurves.SecondsAt(curve, multiple)))
            .Where(point => point.Seconds <= 5)
            .Select(point => point.Amperes * point.Amperes * point.Seconds)
            .DefaultIfEmpty(0)
            .Max();
    }
}
