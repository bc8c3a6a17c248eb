using MathNet.Numerics.Optimization;
using Proveout.Engine.Heat;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Identification and tuning against the literature's worked examples.</summary>
public sealed class ControlTests
{
    // Skogestad 2003, table 4: E1, E4 and E5 reduced by the half rule, PI with the closed-loop time constant equal to the dead time.
    [Theory]
    [InlineData(1, 0.2, 0, 0.1, 1.1, 5.5, 0.8)]
    [InlineData(1.5, 0, 2.5, 2.5, 1.5, 0.3, 1.5)]
    [InlineData(1.1, 0, 0.148, 0.148, 1.1, 3.716, 1.1)]
    [InlineData(2.5, 0, 1.47, 1.47, 2.5, 0.850340, 2.5)]
    public void SIMC_PI_gives_the_papers_settings(double slow, double fast, double dead, double lag, double reduced, double gain, double integral)
    {
        var model = new ProcessModel(1, slow, fast, dead);
        var tuning = TuningRules.SimcPi(model, lag);
        Assert.Equal((reduced, lag), (model.Halved().TimeConstantSeconds, model.Halved().DeadTimeSeconds));
        Assert.Equal(gain, tuning.Gain, 0.001);
        Assert.Equal(integral, tuning.IntegralSeconds, 1e-9);
    }

    // Skogestad 2003, E2 in second order: series PID 1.2987, 2, 1.2; in standard form 2.0779, 3.2, 0.75. E4: 0.5, 1.5, 1. E5: 17.857, 0.224, 0.22.
    [Theory]
    [InlineData(2, 1.2, 0.77, 2.077922, 3.2, 0.75)]
    [InlineData(1.5, 1, 1.5, 0.833333, 2.5, 0.6)]
    [InlineData(1, 0.22, 0.028, 35.395408, 0.444, 0.110991)]
    public void SIMC_PID_gives_the_papers_settings_in_standard_form(double slow, double fast, double dead, double gain, double integral, double derivative)
    {
        var tuning = TuningRules.SimcPid(new ProcessModel(1, slow, fast, dead), dead);
        Assert.Equal(gain, tuning.Gain, 1e-5);
        Assert.Equal(integral, tuning.IntegralSeconds, 1e-6);
        Assert.Equal(derivative, tuning.DerivativeSeconds, 1e-5);
    }

    // 1/(s+1)³: Ku = 8 and Pu = 2π/√3 by hand; Ziegler and Nichols' table.
    [Fact]
    public void Ziegler_and_Nichols_give_their_table()
    {
        var tuning = TuningRules.ZieglerNicholsPid(8, 2 * Math.PI / Math.Sqrt(3));
        Assert.Equal((4.8, 1.813799, 0.453450), (Math.Round(tuning.Gain, 9), Math.Round(tuning.IntegralSeconds, 6), Math.Round(tuning.DerivativeSeconds, 6)));
    }

    // Skogestad 2003, table 1: with τc = θ and Ti = τ1, Ms is 1.59; an integrating process with Ti = 8θ has 1.70.
    [Theory]
    [InlineData(1, 1, 1.0, 1.5905)]
    [InlineData(8, 1, 1.0, 1.5905)]
    [InlineData(1e5, 1, 1.0, 1.7035)]
    public void Robustness_is_the_papers(double slow, double dead, double lag, double sensitivity)
    {
        var model = new ProcessModel(1, slow, 0, dead);
        Assert.Equal(sensitivity, LoopRobustness.LargestSensitivity(model, TuningRules.SimcPi(model, lag)), 0.002);
    }

    // Exact cycles of first-order processes with dead time (Åström and Hägglund): amplitude and period for a relay of 1.
    [Theory]
    [InlineData(1, 10, 1, 0.0951626, 3.818058)]
    [InlineData(2, 50, 5, 0.1903252, 19.09029)]
    [InlineData(1, 1, 1, 0.6321206, 2.979756)]
    public void A_relay_cycle_names_its_process(double gain, double slow, double dead, double swing, double period)
    {
        var model = Relay.FirstOrder(gain, 1, swing, period)!;
        Assert.Equal(slow, model.TimeConstantSeconds, 0.001 * slow);
        Assert.Equal(dead, model.DeadTimeSeconds, 0.001 * dead);
    }

    // By hand: 4/(π 0.095163) = 13.380, 18 % below the true ultimate gain of 16.35.
    [Fact]
    public void The_describing_function_gives_the_ultimate_gain_that_arithmetic_does() =>
        Assert.Equal(13.380, Relay.UltimateGain(1, 0.095163), 0.001);

    [Theory]
    [InlineData(200, 50, 0, 5)]
    [InlineData(-300, 120, 0, 6)]
    [InlineData(250, 100, 20, 8)]
    [InlineData(80, 600, 45, 20)]
    public void A_step_is_fitted_back_to_the_process_that_made_it(double gain, double slow, double fast, double dead)
    {
        var model = new ProcessModel(gain, slow, fast, dead);
        double[] times = [.. Enumerable.Range(-5, 400).Select(index => index * 5 * slow / 390)];
        var fit = StepFit.Of(times, [.. times.Select(time => 22 + (0.5 * model.StepAt(time)))], 0.5, isSecondOrder: fast > 0)!;
        Assert.Equal(gain, fit.Model.Gain, 1e-3 * Math.Abs(gain));
        Assert.Equal(slow, fit.Model.TimeConstantSeconds, 1e-3 * slow);
        Assert.Equal(fast, fit.Model.SecondTimeConstantSeconds, 2e-3 * slow);
        Assert.Equal(dead, fit.Model.DeadTimeSeconds, 2e-3 * slow);
        Assert.Equal(22, fit.Rest, 0.01);
    }

    [Fact]
    public void A_noisy_step_is_fitted_within_its_noise()
    {
        var random = new Random(5);
        var model = new ProcessModel(220, 80, 0, 6);
        double[] times = [.. Enumerable.Range(-10, 500).Select(index => (double)index)];
        double[] noisy = [.. times.Select(time => 22 + model.StepAt(time) + (random.NextDouble() - 0.5))];
        var fit = StepFit.Of(times, noisy, 1)!;
        Assert.Equal(80, fit.Model.TimeConstantSeconds, 0.5);
        Assert.Equal(6, fit.Model.DeadTimeSeconds, 0.5);
        Assert.Equal(Math.Sqrt(1.0 / 12), fit.ResidualDeviation, 0.03);
    }

    [Fact]
    public void A_log_in_which_nothing_moves_gives_no_process() =>
        Assert.Null(StepFit.Of([.. Enumerable.Range(0, 50).Select(index => (double)index)], [.. Enumerable.Repeat(22.0, 50)], 1));

    // MathNet.Numerics' Nelder-Mead on Rosenbrock's valley, whose minimum is at (1, 1).
    [Fact]
    public void The_simplex_search_finds_what_the_library_finds()
    {
        static double Valley(double x, double y) => Math.Pow(1 - x, 2) + (100 * Math.Pow(y - (x * x), 2));
        var ours = SimplexSearch.Minimise(point => Valley(point[0], point[1]), [-1.2, 1], [0.5, 0.5]);
        var theirs = new NelderMeadSimplex(1e-12, 5000).FindMinimum(ObjectiveFunction.Value(point => Valley(point[0], point[1])), MathNet.Numerics.LinearAlgebra.Vector<double>.Build.DenseOfArray([-1.2, 1])).MinimizingPoint;
        Assert.Equal(theirs[0], ours[0], 1e-4);
        Assert.Equal(theirs[1], ours[1], 1e-4);
        Assert.Equal(1, ours[0], 1e-5);
    }

    [Fact]
    public void A_loop_with_an_output_that_has_ends_does_not_wind_up()
    {
        var model = new ProcessModel(300, 120, 0, 6);
        var run = LoopSimulation.Of(model, TuningRules.SimcPi(model, 6), 22, 220, 1, 1200);
        Assert.InRange(run.Overshoot, 0, 12);
        Assert.NotNull(run.SettledSeconds);
        Assert.All(run.Output, output => Assert.InRange(output, 0, 1));
        Assert.Equal(220, run.Measured[^1], 0.1);
    }

    // Closed form: while the output is at its end, the process answers as to a step.
    [Fact]
    public void At_full_output_the_loop_is_the_step_answer()
    {
        var model = new ProcessModel(300, 120, 20, 6);
        var run = LoopSimulation.Of(model, new Tuning(1, double.PositiveInfinity, 0), 20, 1000, 1, 300);
        for (var at = 0; at < run.Seconds.Count; at += 100)
            Assert.Equal(20 + model.StepAt(run.Seconds[at]), run.Measured[at], 0.7);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(255)]
    public void The_parallel_form_is_the_standard_form_times_the_full_output(double full)
    {
        var (proportional, integral, derivative) = new Tuning(0.05, 40, 4).Parallel(full);
        Assert.Equal((0.05 * full, 0.05 * full / 40, 0.05 * full * 4), (proportional, integral, derivative));
    }
}
