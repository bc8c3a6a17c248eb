namespace Proveout.Engine.Heat;

/// <summary>A sensor, its cable, its input, and what the controller is told, as designed.</summary>
/// <param name="Type">The sensor.</param>
/// <param name="Input">The input.</param>
/// <param name="WorkingCelsius">Temperature in °C that the heater is held at in use.</param>
public sealed record SensorChannel(SensorType Type, SensorInput Input, double WorkingCelsius)
{
    /// <summary>Most resistance of cable and contacts of a sound channel in ohms, both ways together.</summary>
    public double CableOhms { get; init; } = 0.5;

    /// <summary>What the controller is told.</summary>
    public SensorSetting Setting => new(Type.Curve, Input.PullUpOhms);

    /// <summary>Lowest and highest resistance in ohms at the loose plug of the cable, with the sensor between two temperatures in °C.</summary>
    public (double Low, double High) OhmsBetween(double from, double to)
    {
        var (one, other) = (Type.OhmsAt(from), Type.OhmsAt(to));
        return (Math.Min(one.Low, other.Low), Math.Max(one.High, other.High) + CableOhms);
    }

    /// <summary>Lowest and highest of what is shown less what is true, in K, at a temperature in °C.</summary>
    public (double Low, double High) ErrorAt(double celsius) =>
        (ShownSensor.Sound(this).Shown(celsius, celsius) is var (low, high)) ? (low - celsius, high - celsius) : default;
}
