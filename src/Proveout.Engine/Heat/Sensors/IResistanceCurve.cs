namespace Proveout.Engine.Heat;

/// <summary>How the resistance of a temperature sensor depends on its temperature. Strictly rising or strictly falling over its range.</summary>
public interface IResistanceCurve
{
    /// <summary>Lowest temperature in °C that the curve is meant for.</summary>
    double LowestCelsius { get; }

    /// <summary>Highest temperature in °C that the curve is meant for.</summary>
    double HighestCelsius { get; }

    /// <summary>Resistance in ohms at a temperature.</summary>
    /// <param name="celsius">Temperature in °C, from <see cref="LowestCelsius"/> to <see cref="HighestCelsius"/>.</param>
    double OhmsAt(double celsius);

    /// <summary>Temperature in °C at a resistance; not held to the range, so that whoever shows it can say that it lies outside.</summary>
    /// <param name="ohms">Resistance, above zero.</param>
    double CelsiusAt(double ohms);
}
