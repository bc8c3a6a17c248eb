namespace Proveout.Engine.Motion;

/// <summary>A resonance that was found.</summary>
/// <param name="Hertz">Undamped natural frequency.</param>
/// <param name="DampingRatio">Damping ratio; null when it cannot be told.</param>
/// <param name="Doubt">Why the damping cannot be told; empty when it can.</param>
/// <param name="Height">Density at the top, in (m/s²)²/Hz.</param>
/// <param name="Excess">How many times it stands above what is around it.</param>
/// <param name="Blows">Blows whose ringing gave the damping; 0 when the width of the peak did.</param>
public sealed record VibrationMode(Uncertain Hertz, Uncertain? DampingRatio, string Doubt, Uncertain Height, double Excess, int Blows)
{
    /// <summary>Root-mean-square acceleration of the peak, in m/s²: half-power width times pi / 2 is its width as a rectangle (a resonance of one degree of freedom).</summary>
    public double Acceleration => Math.Sqrt(Height.Value * Math.PI * (DampingRatio?.Value ?? 0.05) * Hertz.Value);

    /// <summary>Root-mean-square travel, in m.</summary>
    public double Travel => Acceleration / Math.Pow(2 * Math.PI * Hertz.Value, 2);
}
