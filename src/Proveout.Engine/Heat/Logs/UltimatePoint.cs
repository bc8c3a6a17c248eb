namespace Proveout.Engine.Heat;

/// <summary>The gain of a controller without integral and derivative under which a process swings by itself for good, and the period of that.</summary>
/// <param name="Gain">Ku, full output for each kelvin.</param>
/// <param name="PeriodSeconds">Pu in seconds.</param>
public readonly record struct UltimatePoint(double Gain, double PeriodSeconds)
{
    /// <summary>Of a process: where its lag is half a turn, ωθ + atan ωτ1 + atan ωτ2 = π; null when it never is.</summary>
    public static UltimatePoint? Of(ProcessModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (model.DeadTimeSeconds <= 0)
            return null;
        double Lag(double omega) => (omega * model.DeadTimeSeconds) + Math.Atan(omega * model.TimeConstantSeconds) + Math.Atan(omega * model.SecondTimeConstantSeconds);
        // The dead time alone turns by half a turn at π/θ.
        var (low, high) = (0.0, Math.PI / model.DeadTimeSeconds);
        for (var step = 0; step < 200; step++)
        {
            var middle = (low + high) / 2;
            if (Lag(middle) < Math.PI)
                low = middle;
            else
                high = middle;
        }

        var size = model.Gain / (double.Hypot(1, low * model.TimeConstantSeconds) * double.Hypot(1, low * model.SecondTimeConstantSeconds));
        return new(1 / size, 2 * Math.PI / low);
    }
}
