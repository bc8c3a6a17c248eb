namespace Proveout.Engine.Heat;

/// <summary>Settings of controllers by rules of the literature.</summary>
public static class TuningRules
{
    /// <summary>PI by SIMC: Kc = τ1/(k (τc + θ)), Ti = min(τ1, 4 (τc + θ)); a second time constant is spread by the half rule.</summary>
    /// <remarks>Skogestad 2003, equations 23 and 24.</remarks>
    /// <param name="model">The process; its dead time and closed-loop time constant are not both zero.</param>
    /// <param name="closedLoopSeconds">τc in seconds: as large as the dead time is quick, larger is calmer. Zero or above.</param>
    public static Tuning SimcPi(ProcessModel model, double closedLoopSeconds)
    {
        ArgumentNullException.ThrowIfNull(model);
        var first = model.Halved();
        var lag = closedLoopSeconds + first.DeadTimeSeconds;
        return new(first.TimeConstantSeconds / (first.Gain * lag), Math.Min(first.TimeConstantSeconds, 4 * lag), 0);
    }

    /// <summary>PID by SIMC for a process of second order: in series form Td = τ2; given here in standard form.</summary>
    public static Tuning SimcPid(ProcessModel model, double closedLoopSeconds)
    {
        ArgumentNullException.ThrowIfNull(model);
        var lag = closedLoopSeconds + model.DeadTimeSeconds;
        return Tuning.FromSeries(model.TimeConstantSeconds / (model.Gain * lag), Math.Min(model.TimeConstantSeconds, 4 * lag), model.SecondTimeConstantSeconds);
    }

    /// <summary>PID by Ziegler and Nichols from the ultimate gain and period: 0.6 Ku, Pu/2, Pu/8.</summary>
    /// <remarks>J. G. Ziegler and N. B. Nichols, Optimum settings for automatic controllers, Transactions of the ASME 64 (1942) 759-768. Swings widely: for comparison.</remarks>
    public static Tuning ZieglerNicholsPid(double ultimateGain, double ultimatePeriodSeconds) =>
        new(0.6 * ultimateGain, ultimatePeriodSeconds / 2, ultimatePeriodSeconds / 8);

    /// <summary>PI by Ziegler and Nichols: 0.45 Ku, Pu/1.2. Swings widely: for comparison.</summary>
    public static Tuning ZieglerNicholsPi(double ultimateGain, double ultimatePeriodSeconds) => new(0.45 * ultimateGain, ultimatePeriodSeconds / 1.2, 0);

    /// <summary>PI by Tyreus and Luyben: Ku/3.2, 2.2 Pu.</summary>
    /// <remarks>B. D. Tyreus and W. L. Luyben, Industrial and Engineering Chemistry Research 31 (1992) 2625-2628.</remarks>
    public static Tuning TyreusLuybenPi(double ultimateGain, double ultimatePeriodSeconds) => new(ultimateGain / 3.2, 2.2 * ultimatePeriodSeconds, 0);
}
