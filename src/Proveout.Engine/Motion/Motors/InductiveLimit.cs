namespace Proveout.Engine.Motion;

/// <summary>Simpler figures of how fast a current gets into a coil.</summary>
public static class InductiveLimit
{
    /// <summary>Time for the current to rise from nothing to a value: -(L / R) ln(1 - I R / V), in s; infinite when the supply cannot drive it (first-order circuit).</summary>
    public static double RiseSeconds(double henries, double ohms, double volts, double amperes) =>
        amperes * ohms >= volts ? double.PositiveInfinity : -henries / ohms * Math.Log(1 - (amperes * ohms / volts));

    /// <summary>Full-step turns a second from the time 2 L I / V that a reversal takes, resistance and back-EMF ignored: a rough upper bound that many tables print.</summary>
    public static double TurnsPerSecond(double henries, double volts, double amperes, double fullStepsByTurn) =>
        volts / (2 * henries * amperes * fullStepsByTurn);
}
