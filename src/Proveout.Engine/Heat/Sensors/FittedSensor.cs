namespace Proveout.Engine.Heat;

/// <summary>A sensor as it is in the machine: what it is, and what stands in its way.</summary>
/// <param name="Curve">The curve of the sensor.</param>
/// <param name="SeriesOhms">Cable and contacts, in series with it.</param>
/// <param name="ParallelOhms">Leakage across its plug; infinite when none.</param>
public readonly record struct FittedSensor(IResistanceCurve Curve, double SeriesOhms, double ParallelOhms)
{
    /// <summary>Resistance that the input sees at a temperature of the sensor.</summary>
    public double OhmsAt(double celsius)
    {
        var ohms = Curve.OhmsAt(celsius) + SeriesOhms;
        return double.IsPositiveInfinity(ParallelOhms) ? ohms : ohms * ParallelOhms / (ohms + ParallelOhms);
    }

    /// <summary>Temperature of the sensor in °C at which the input sees a resistance; null when it never does.</summary>
    public double? CelsiusAt(double ohms)
    {
        var series = double.IsPositiveInfinity(ParallelOhms) ? ohms : ohms < ParallelOhms ? 1 / ((1 / ohms) - (1 / ParallelOhms)) : double.PositiveInfinity;
        var sensor = series - SeriesOhms;
        return sensor > 0 && double.IsFinite(sensor) && Curve.CelsiusAt(sensor) is var celsius && celsius <= Curve.HighestCelsius && celsius >= Curve.LowestCelsius ? celsius : null;
    }
}
