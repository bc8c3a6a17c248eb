using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;

namespace Proveout.Engine.Tests.Motion;

/// <summary>A carriage on a spring whose end the drive moves with a sine of rising frequency.</summary>
internal static class SweptShake
{
    private const double From = 10;
    private const double To = 160;
    private const int StepsBySample = 4;

    public static double[] Samples(double rate, double seconds, double hertz, double damping, int kept, bool byOctaves)
    {
        var count = (int)(rate * seconds);
        var turn = 2 * Math.PI * hertz;
        // In coordinates relative to the drive: x'' + 2 zeta w x' + w² x = -drive; measured is x'' + drive.
        double Drive(double time)
        {
            var (phase, now) = byOctaves
                ? (2 * Math.PI * From * seconds / Math.Log(To / From) * (Math.Pow(To / From, time / seconds) - 1), From * Math.Pow(To / From, time / seconds))
                : (2 * Math.PI * ((From * time) + ((To - From) * time * time / (2 * seconds))), From + ((To - From) * time / seconds));
            return Math.Pow(now / hertz, kept) * Math.Sin(phase);
        }

        var states = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense(2), 0, seconds, (count * StepsBySample) + 1, (time, state) => Vector<double>.Build.Dense([state[1], -Drive(time) - (turn * turn * state[0]) - (2 * damping * turn * state[1])]));
        var random = new Random(1);
        return [.. Enumerable.Range(0, count).Select(index => -(turn * turn * states[index * StepsBySample][0]) - (2 * damping * turn * states[index * StepsBySample][1]) + (0.002 * SyntheticShake.Gauss(random)))];
    }
}
