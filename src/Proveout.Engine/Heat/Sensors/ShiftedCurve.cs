namespace Proveout.Engine.Heat;

/// <summary>A curve of a sensor that reads wrong by its whole tolerance in K, one way.</summary>
/// <param name="Nominal">The nominal curve.</param>
/// <param name="Tolerance">Tolerance in K at a temperature in °C, growing by less than 1 K with each K.</param>
/// <param name="Sign">1 for a sensor that is as if warmer, -1 as if colder.</param>
internal sealed record ShiftedCurve(IResistanceCurve Nominal, Func<double, double> Tolerance, int Sign) : IResistanceCurve
{
    public double LowestCelsius => Nominal.LowestCelsius;

    public double HighestCelsius => Nominal.HighestCelsius;

    public double OhmsAt(double celsius) => Nominal.OhmsAt(celsius + (Sign * Tolerance(celsius)));

    // The tolerance hardly changes over itself: the fixed point is reached in a few steps.
    public double CelsiusAt(double ohms)
    {
        var apparent = Nominal.CelsiusAt(ohms);
        var celsius = apparent;
        for (var step = 0; step < 20; step++)
            celsius = apparent - (Sign * Tolerance(celsius));
        return celsius;
    }
}
