using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>The diode test of a hand-held meter: a small current, and the volts that it takes to drive it.</summary>
/// <param name="LeastAmperes">Least test current.</param>
/// <param name="MostAmperes">Most test current.</param>
/// <param name="LeastOpenVolts">Least voltage at which a meter shows over range.</param>
/// <param name="MostOpenVolts">Most voltage at which every meter shows over range.</param>
/// <param name="RelativeError">Error as a fraction of the reading.</param>
/// <param name="ErrorVolts">Further error in volts.</param>
public sealed record DiodeTestMode(
    double LeastAmperes,
    double MostAmperes,
    double LeastOpenVolts,
    double MostOpenVolts,
    double RelativeError,
    double ErrorVolts)
    : MeterMode(
        "diode-test",
        "Diode test: red lead where the check says, for the reading changes with the leads exchanged.",
        "V",
        12)
{
    /// <summary>The diode test of common meters: 0.5 to 1.5 mA, over range from 2 to 3.3 V, ±(1 % + 3 digits of a millivolt); common practice.</summary>
    public static DiodeTestMode HandHeld { get; } = new(0.5e-3, 1.5e-3, 2.0, ElementBand.OpenCircuitVolts, 0.01, 0.003);

    /// <inheritdoc/>
    public override ReadingInterval Shown(double low, double high)
    {
        var least = low >= MostOpenVolts ? ReadingInterval.OverRange : Math.Max(0, (low * (1 - RelativeError)) - ErrorVolts);
        var most = (high * (1 + RelativeError)) + ErrorVolts;
        return new(least, most >= LeastOpenVolts ? ReadingInterval.OverRange : most);
    }
}
