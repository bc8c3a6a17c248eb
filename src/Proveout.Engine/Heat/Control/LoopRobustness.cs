using System.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>How far a loop is from swinging by itself.</summary>
public static class LoopRobustness
{
    private const int Points = 4000;

    /// <summary>Ms, the largest value of |1/(1 + L(jω))|: 1.2 to 2 is robust, above 2 nervous (K. J. Åström and T. Hägglund, PID Controllers, 2nd edition, 1995, section 4.3).</summary>
    /// <param name="model">The process; with a dead time above zero or a controller without derivative.</param>
    /// <param name="tuning">The controller.</param>
    /// <remarks>Over six decades of frequency in steps of 0.35 %; near a maximum that is flat the value is right to a few parts in 10⁵.</remarks>
    public static double LargestSensitivity(ProcessModel model, Tuning tuning)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(tuning);
        var middle = 1 / Math.Max(model.DeadTimeSeconds, model.TimeConstantSeconds / 1e3);
        var largest = 1.0;
        for (var point = 0; point <= Points; point++)
        {
            var omega = middle * Math.Pow(10, -4 + (6.0 * point / Points));
            largest = Math.Max(largest, 1 / Complex.Abs(1 + Loop(model, tuning, omega)));
        }

        return largest;
    }

    /// <summary>L(jω) of process and controller.</summary>
    internal static Complex Loop(ProcessModel model, Tuning tuning, double omega)
    {
        var s = new Complex(0, omega);
        var process = model.Gain * Complex.Exp(-s * model.DeadTimeSeconds) / (((model.TimeConstantSeconds * s) + 1) * ((model.SecondTimeConstantSeconds * s) + 1));
        return process * tuning.Gain * (1 + (1 / (s * tuning.IntegralSeconds)) + (s * tuning.DerivativeSeconds));
    }
}
