namespace Proveout.Engine.Heat;

/// <summary>A process of first or second order with dead time: k·e^(−θs) / ((τ1 s + 1)(τ2 s + 1)).</summary>
/// <param name="Gain">k, in units of what is measured for the full output (0 to 1); not zero.</param>
/// <param name="TimeConstantSeconds">τ1 in seconds, above zero.</param>
/// <param name="SecondTimeConstantSeconds">τ2 in seconds, from 0 to τ1; 0 for a first-order process.</param>
/// <param name="DeadTimeSeconds">θ in seconds, zero or above.</param>
public sealed record ProcessModel(double Gain, double TimeConstantSeconds, double SecondTimeConstantSeconds, double DeadTimeSeconds)
{
    /// <summary>What the process answers to a step of 1 after a time in seconds, from rest at zero.</summary>
    public double StepAt(double seconds)
    {
        var since = seconds - DeadTimeSeconds;
        if (since <= 0)
            return 0;
        var (slow, fast) = (TimeConstantSeconds, SecondTimeConstantSeconds);
        if (fast <= 0)
            return Gain * (1 - Math.Exp(-since / slow));
        // Equal time constants are the limit of the formula for different ones.
        return slow - fast > 1e-6 * slow
            ? Gain * (1 - (((slow * Math.Exp(-since / slow)) - (fast * Math.Exp(-since / fast))) / (slow - fast)))
            : Gain * (1 - ((1 + (since / slow)) * Math.Exp(-since / slow)));
    }

    /// <summary>The same process as one of first order by the half rule: half of τ2 goes to the time constant, half to the dead time.</summary>
    /// <remarks>S. Skogestad, Simple analytic rules for model reduction and PID controller tuning, Journal of Process Control 13 (2003) 291-309, section 2.</remarks>
    public ProcessModel Halved() => this with
    {
        TimeConstantSeconds = TimeConstantSeconds + (SecondTimeConstantSeconds / 2),
        SecondTimeConstantSeconds = 0,
        DeadTimeSeconds = DeadTimeSeconds + (SecondTimeConstantSeconds / 2),
    };
}
