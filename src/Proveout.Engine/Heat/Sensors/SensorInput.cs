namespace Proveout.Engine.Heat;

/// <summary>An input that holds a sensor against a pull-up resistor, and reads the share of the reference that lies across the sensor.</summary>
/// <remarks>The reference is that of the converter too, so that it drops out: with the share r = R/(R + Rp) the input knows R/Rp and nothing else.</remarks>
/// <param name="PullUpOhms">Resistance of the pull-up, above zero.</param>
/// <param name="PullUpShare">Its tolerance, as a share of it: 0.01 for 1 %.</param>
public sealed record SensorInput(double PullUpOhms, double PullUpShare)
{
    /// <summary>Steps of the converter from 0 to the reference; 4096 for 12 bits.</summary>
    public int Steps { get; init; } = 4096;

    /// <summary>Share of the reference across the sensor, 0 to 1.</summary>
    public double ShareAt(double ohms) => double.IsPositiveInfinity(ohms) ? 1 : ohms / (ohms + PullUpOhms);

    /// <summary>What one step of the converter is worth in K at a temperature: how finely the input can tell.</summary>
    public double StepKelvin(IResistanceCurve curve, double celsius)
    {
        const double Apart = 0.01;
        var change = Math.Abs(ShareAt(curve.OhmsAt(celsius + Apart)) - ShareAt(curve.OhmsAt(celsius - Apart))) / (2 * Apart);
        return 1 / (Steps * change);
    }
}
