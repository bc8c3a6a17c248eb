namespace Proveout.Engine.Heat;

/// <summary>What is wrong with readings in a log.</summary>
public enum LogFlawKind
{
    /// <summary>Readings as of a sensor whose circuit is open or short; they are left out.</summary>
    OpenOrShort,

    /// <summary>Readings jump away and come back sooner than anything heated can; they are left out.</summary>
    Spikes,

    /// <summary>What is shown jumps and stays there.</summary>
    Jump,

    /// <summary>What is shown does not move at all while it is heated; what follows is left out.</summary>
    Stuck,
}

/// <summary>Something wrong with the readings of a sensor.</summary>
/// <param name="Kind">What.</param>
/// <param name="Sensor">Heading of the sensor.</param>
/// <param name="Line">Line where it is first seen.</param>
/// <param name="Seconds">When, from the first row of the run.</param>
/// <param name="Rows">How many rows show it.</param>
/// <param name="Celsius">The reading there.</param>
/// <param name="ForSeconds">For how long; zero when that does not matter.</param>
public sealed record LogFlaw(LogFlawKind Kind, string Sensor, int Line, double Seconds, long Rows, double Celsius, double ForSeconds = 0);
