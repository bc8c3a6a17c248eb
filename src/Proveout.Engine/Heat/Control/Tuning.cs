namespace Proveout.Engine.Heat;

/// <summary>Settings of a controller in standard form: u = Kc (e + 1/Ti ∫e dt + Td de/dt).</summary>
/// <param name="Gain">Kc, full output (0 to 1) for a unit of what is measured.</param>
/// <param name="IntegralSeconds">Ti in seconds; infinite for none.</param>
/// <param name="DerivativeSeconds">Td in seconds; 0 for none.</param>
public sealed record Tuning(double Gain, double IntegralSeconds, double DerivativeSeconds)
{
    /// <summary>Settings given in series form, Kc (1 + 1/(Ti s)) (1 + Td s), in standard form: each times or over 1 + Td/Ti.</summary>
    public static Tuning FromSeries(double gain, double integralSeconds, double derivativeSeconds)
    {
        var factor = 1 + (derivativeSeconds / integralSeconds);
        return new(gain * factor, integralSeconds * factor, derivativeSeconds / factor);
    }

    /// <summary>The same in parallel form, u = Kp e + Ki ∫e dt + Kd de/dt, for an output that runs from 0 to a number such as 1, 100 or 255.</summary>
    /// <param name="fullOutput">What the controller calls full output, above zero.</param>
    public (double Proportional, double Integral, double Derivative) Parallel(double fullOutput) =>
        (Gain * fullOutput, double.IsPositiveInfinity(IntegralSeconds) ? 0 : Gain * fullOutput / IntegralSeconds, Gain * fullOutput * DerivativeSeconds);
}
