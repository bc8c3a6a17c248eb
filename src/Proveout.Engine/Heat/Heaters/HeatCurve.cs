namespace Proveout.Engine.Heat;

/// <summary>What a heater does in time: temperature of what is heated, and what is shown of it.</summary>
public sealed class HeatCurve
{
    private HeatCurve(double stepSeconds, double[] real, double[] shown) => (StepSeconds, Real, Shown) = (stepSeconds, real, shown);

    /// <summary>Time between samples in seconds.</summary>
    public double StepSeconds { get; }

    /// <summary>Temperature of what is heated in °C, from time 0 on.</summary>
    public IReadOnlyList<double> Real { get; }

    /// <summary>Temperature that is shown in °C.</summary>
    public IReadOnlyList<double> Shown { get; }

    /// <summary>Integrates C dT/dt = P u − Q(T) and the sensor's lag (classical Runge-Kutta of fourth order).</summary>
    /// <param name="heater">The heater.</param>
    /// <param name="output">Share of full output at a time in seconds.</param>
    /// <param name="startCelsius">Temperature of what is heated at the start; the sensor has had time to follow.</param>
    /// <param name="forSeconds">How long, above zero.</param>
    /// <param name="stepSeconds">Time between samples, above zero.</param>
    public static HeatCurve Of(HeaterTrial heater, Func<double, double> output, double startCelsius, double forSeconds, double stepSeconds)
    {
        ArgumentNullException.ThrowIfNull(output);
        var count = (int)Math.Ceiling(forSeconds / stepSeconds) + 1;
        var (real, shown) = (new double[count], new double[count]);
        var seen = startCelsius - heater.AmbientCelsius;
        real[0] = startCelsius;
        shown[0] = heater.AmbientCelsius + (heater.SeenShare * seen);
        // The sensor is too quick for a large step where its lag is small; it is followed exactly, on a temperature that is straight within the step.
        var keep = Math.Exp(-stepSeconds / heater.SensorLagSeconds);
        for (var at = 1; at < count; at++)
        {
            var power = heater.Watts * output((at - 0.5) * stepSeconds);
            double Slope(double celsius) => (power - heater.LossAt(celsius)) / heater.JoulesPerKelvin;
            var first = Slope(real[at - 1]);
            var second = Slope(real[at - 1] + (stepSeconds / 2 * first));
            var third = Slope(real[at - 1] + (stepSeconds / 2 * second));
            var fourth = Slope(real[at - 1] + (stepSeconds * third));
            real[at] = real[at - 1] + (stepSeconds / 6 * (first + (2 * second) + (2 * third) + fourth));
            var (before, after) = (real[at - 1] - heater.AmbientCelsius, real[at] - heater.AmbientCelsius);
            var ramp = (after - before) / stepSeconds * heater.SensorLagSeconds;
            seen = after - ramp + (keep * (seen - before + ramp));
            shown[at] = heater.AmbientCelsius + (heater.SeenShare * seen);
        }

        return new(stepSeconds, real, shown);
    }

    /// <summary>What is shown at a time, between samples on a straight line; the last value after the end.</summary>
    public double ShownAt(double seconds)
    {
        var place = Math.Clamp(seconds / StepSeconds, 0, Shown.Count - 1);
        var before = (int)place;
        return before + 1 < Shown.Count ? Shown[before] + ((place - before) * (Shown[before + 1] - Shown[before])) : Shown[before];
    }

    /// <summary>When a temperature is first shown, in seconds; infinite when it is not.</summary>
    public double SecondsTo(double celsius)
    {
        for (var at = 1; at < Shown.Count; at++)
            if (Shown[at] >= celsius)
                return StepSeconds * (at - ((Shown[at] - celsius) / Math.Max(Shown[at] - Shown[at - 1], double.Epsilon)));
        return double.PositiveInfinity;
    }
}
