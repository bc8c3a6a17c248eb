namespace Proveout.Engine.Heat;

/// <summary>What the steady swing under a relay says of a process.</summary>
/// <remarks>K. J. Åström and T. Hägglund, Automatic tuning of simple regulators, Automatica 20 (1984) 645-651.</remarks>
public static class Relay
{
    /// <summary>Ultimate gain by the describing function: 4d/(π √(a² − ε²)). For a first-order process with dead time it is 11 to 19 % too low.</summary>
    /// <param name="relayAmplitude">d: half of the difference between both outputs, above zero.</param>
    /// <param name="swingAmplitude">a: half of the swing from lowest to highest, above the hysteresis.</param>
    /// <param name="hysteresis">ε: half of the relay's dead band, zero or above.</param>
    public static double UltimateGain(double relayAmplitude, double swingAmplitude, double hysteresis = 0) =>
        4 * relayAmplitude / (Math.PI * Math.Sqrt((swingAmplitude * swingAmplitude) - (hysteresis * hysteresis)));

    /// <summary>The first-order process with dead time whose cycle under a relay without hysteresis has just this swing and period; null when none has.</summary>
    /// <remarks>Exact cycle: a = k d (1 − e^(−θ/τ)), P = 2 (θ + τ ln(2 − e^(−θ/τ))).</remarks>
    /// <param name="gain">k, from the steady state.</param>
    /// <param name="relayAmplitude">d.</param>
    /// <param name="swingAmplitude">a.</param>
    /// <param name="periodSeconds">P in seconds.</param>
    public static ProcessModel? FirstOrder(double gain, double relayAmplitude, double swingAmplitude, double periodSeconds)
    {
        var share = swingAmplitude / (gain * relayAmplitude);
        if (share is not (> 0 and < 1))
            return null;
        var ratio = -Math.Log(1 - share);
        var slow = periodSeconds / (2 * (ratio + Math.Log(2 - Math.Exp(-ratio))));
        return new ProcessModel(gain, slow, 0, ratio * slow);
    }
}
