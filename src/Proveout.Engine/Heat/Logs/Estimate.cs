namespace Proveout.Engine.Heat;

/// <summary>A figure with its standard uncertainty, in the same unit (JCGM 100:2008, 2.3.1).</summary>
/// <param name="Value">Best estimate.</param>
/// <param name="Standard">Standard uncertainty.</param>
public readonly record struct Estimate(double Value, double Standard)
{
    /// <summary>Difference of two independent figures (JCGM 100:2008, equation 10).</summary>
    public Estimate Less(Estimate other) => new(Value - other.Value, double.Hypot(Standard, other.Standard));

    /// <summary>True when it differs from zero by more than its expanded uncertainty (coverage factor 2).</summary>
    public bool IsBeyondNoise => Math.Abs(Value) > 2 * Standard;
}
