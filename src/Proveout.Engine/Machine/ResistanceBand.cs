using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A resistance known to lie between two limits.</summary>
/// <remarks>Invariant: 0 &lt; low ≤ nominal ≤ high. Equality is exact.</remarks>
public readonly record struct ResistanceBand
{
    /// <summary>Makes a band.</summary>
    /// <param name="low">Lower limit, above zero.</param>
    /// <param name="nominal">The value to expect, within the limits.</param>
    /// <param name="high">Upper limit; null when the path may be open.</param>
    /// <exception cref="ArgumentOutOfRangeException">The values are not in order, or the lower limit is not above zero.</exception>
    public ResistanceBand(ElectricResistance low, ElectricResistance nominal, ElectricResistance? high)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(low.Ohms, nameof(low));
        ArgumentOutOfRangeException.ThrowIfLessThan(nominal.Ohms, low.Ohms, nameof(nominal));
        if (high is { } limit)
            ArgumentOutOfRangeException.ThrowIfLessThan(limit.Ohms, nominal.Ohms, nameof(high));
        (Low, Nominal, High) = (low, nominal, high);
    }

    /// <summary>Lower limit.</summary>
    public ElectricResistance Low { get; }

    /// <summary>The value to expect.</summary>
    public ElectricResistance Nominal { get; }

    /// <summary>Upper limit; null when the path may be open.</summary>
    public ElectricResistance? High { get; }

    /// <summary>
    /// A band from two limits in ohms; the nominal value is their geometric mean, or the lower limit when the path may be open.
    /// </summary>
    public static ResistanceBand FromOhms(double low, double high) =>
        FromOhms(low, double.IsPositiveInfinity(high) ? low : Math.Clamp(Math.Sqrt(low * high), low, high), high);

    /// <summary>A band from values in ohms; an infinite upper limit means that the path may be open.</summary>
    public static ResistanceBand FromOhms(double low, double nominal, double high) =>
        new(
            ElectricResistance.FromOhms(low),
            ElectricResistance.FromOhms(nominal),
            double.IsPositiveInfinity(high) ? null : ElectricResistance.FromOhms(high));

    /// <summary>A band around a value.</summary>
    /// <param name="nominal">The value.</param>
    /// <param name="relativeTolerance">Half width as a fraction of the value, 0 to below 1.</param>
    public static ResistanceBand Around(ElectricResistance nominal, double relativeTolerance) =>
        new(nominal * (1 - relativeTolerance), nominal, nominal * (1 + relativeTolerance));
}
