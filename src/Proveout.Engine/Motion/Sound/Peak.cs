namespace Proveout.Engine.Motion;

/// <summary>A tone that stands out of a spectrum.</summary>
/// <param name="Hertz">Frequency.</param>
/// <param name="Power">Its power, noise included.</param>
/// <param name="Ratio">Power over the noise around it.</param>
/// <param name="StandardHertz">Standard uncertainty of the frequency from that noise.</param>
internal readonly record struct Peak(double Hertz, double Power, double Ratio, double StandardHertz)
{
    /// <summary>How much it counts when tones are matched: amplitude, compressed so that one loud tone does not decide alone.</summary>
    public double Weight { get; } = Math.Pow(Power, 0.25);
}
