using System.Globalization;
using System.Text;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Processes recovered from the swing under a relay.</summary>
public sealed class RelayEstimateTests
{
    // Exact cycles of first-order processes and their true ultimate points, by atan(ωτ) + ωθ = π: (1, 10, 1) has Ku 16.35055 and Pu 3.85000; (1, 1, 1) 2.26183 and 3.09706; (2, 50, 5) 8.17528 and 19.25002; (1.5, 120, 6) 21.37036 and 23.53257.
    [Theory]
    [InlineData(1, 10, 1, 16.35055, 3.85000)]
    [InlineData(1, 1, 1, 2.26183, 3.09706)]
    [InlineData(2, 50, 5, 8.17528, 19.25002)]
    [InlineData(1.5, 120, 6, 21.37036, 23.53257)]
    public void The_true_ultimate_point_comes_from_the_cycle(double gain, double slow, double dead, double ultimateGain, double ultimatePeriod)
    {
        // A hundred times the gain, so that kelvins are swung; the ultimate gain is then a hundredth.
        var relay = Estimate(new ProcessModel(100 * gain, slow, 0, dead), 22 + (50 * gain), 0, dead / 200, 0);
        var ultimate = UltimatePoint.Of(relay.Process!.Model)!.Value;
        Assert.Equal(ultimateGain / 100, ultimate.Gain, 0.01 * ultimateGain / 100);
        Assert.Equal(ultimatePeriod, ultimate.PeriodSeconds, 0.005 * ultimatePeriod);
        Assert.Equal(slow, relay.Process.Model.TimeConstantSeconds, 0.02 * slow);
        Assert.Equal(dead, relay.Process.Model.DeadTimeSeconds, 0.01 * dead);
        // P = 2 (θ + τ ln(2 − e^(−θ/τ))) and a = k d (1 − e^(−θ/τ)) with d a half.
        Assert.Equal(2 * (dead + (slow * Math.Log(2 - Math.Exp(-dead / slow)))), relay.Period.Value, 0.02 * relay.Period.Value);
        Assert.Equal(50 * gain * (1 - Math.Exp(-dead / slow)), relay.Swing.Value, 0.02 * relay.Swing.Value);
    }

    [Fact]
    public void A_target_off_the_middle_and_a_dead_band_do_not_mislead()
    {
        // Held at a quarter of what full output gives, with 1 K either way: on for a quarter of the time.
        var truth = new ProcessModel(300, 120, 0, 6);
        var relay = Estimate(truth, 22 + 75, 1, 0.05, 0);
        Assert.Equal(0.25, relay.MeanOutput, 0.02);
        Assert.Equal(1, relay.HalfHysteresis, 0.2);
        Assert.Equal(120, relay.Process!.Model.TimeConstantSeconds, 3.0);
        Assert.Equal(6, relay.Process.Model.DeadTimeSeconds, 0.15);
        Assert.Equal(300, relay.Process.Model.Gain, 3.0);
    }

    [Fact]
    public void The_ultimate_point_of_a_process_is_the_closed_form()
    {
        // Ku = √(1 + ω²τ²)/k at atan(ωτ) + ωθ = π.
        var point = UltimatePoint.Of(new ProcessModel(1, 10, 0, 1))!.Value;
        Assert.Equal(16.35055, point.Gain, 1e-4);
        Assert.Equal(3.85000, point.PeriodSeconds, 1e-4);
        Assert.Null(UltimatePoint.Of(new ProcessModel(1, 10, 2, 0)));
    }

    [Fact]
    public void Noisy_cycles_give_the_process_within_the_stated_uncertainty()
    {
        var truth = new ProcessModel(300, 120, 0, 6);
        var (gain, slow, dead) = (0, 0, 0);
        for (var seed = 1; seed <= 100; seed++)
        {
            var process = Estimate(truth, 122, 2, 0.25, 0.1, seed).Process!;
            gain += Covers(process.Gain, truth.Gain);
            slow += Covers(process.TimeConstant, truth.TimeConstantSeconds);
            dead += Covers(process.DeadTime, truth.DeadTimeSeconds);
        }

        // As with the step: 88 of a hundred.
        Assert.True(Math.Min(gain, Math.Min(slow, dead)) >= 88, $"gain {gain}, slow {slow}, dead {dead}");
    }

    private static int Covers(Estimate estimate, double truth) => Math.Abs(estimate.Value - truth) <= 2 * estimate.Standard ? 1 : 0;

    [Fact]
    public void A_cycle_that_still_changes_is_refused()
    {
        var text = new StringBuilder("time [s],temp [degC],output [0-1]\n");
        for (var second = 0; second < 800; second++)
            text.Append(CultureInfo.InvariantCulture, $"{second},{60 - (20 * Math.Exp(second / 500.0) * Math.Sin(2 * Math.PI * second / 80)):0.00},{(Math.Sin((2 * Math.PI * second / 80) + 0.001) > 0 ? 1 : 0)}\n");
        Assert.Equal(RelayLack.NotSettled, RelayEstimate.Of(SimulatedLog.Trace(text.ToString(), null), 22).Lack);
    }

    [Fact]
    public void Other_logs_are_no_relays()
    {
        var random = new Random(1);
        var step = SimulatedLog.StepText(new ProcessModel(100, 100, 0, 5), 0.5, 600, 1, () => 0.1 * SimulatedLog.Normal(random));
        Assert.Equal(RelayLack.NoRelay, RelayEstimate.Of(SimulatedLog.Trace(step, null), 22).Lack);
        Assert.Equal(RelayLack.NoRelay, RelayEstimate.Of(SimulatedLog.Trace("time [s],temp [degC]\n0,20\n1,20\n", null), 22).Lack);
    }

    private static RelayEstimate Estimate(ProcessModel model, double target, double half, double step, double deviation, int seed = 0)
    {
        var random = new Random(seed);
        var text = new StringBuilder("time [s],temp [degC],output [0-1]\n");
        var keep = Math.Exp(-step / model.TimeConstantSeconds);
        var delay = (int)Math.Round(model.DeadTimeSeconds / step);
        // The way up takes some time constants; then a dozen cycles.
        var count = (int)(((4 * model.TimeConstantSeconds) + (60 * model.DeadTimeSeconds)) / step);
        var told = new double[count];
        var celsius = 22.0;
        var on = 1.0;
        for (var at = 0; at < count; at++)
        {
            var shown = celsius + (deviation * SimulatedLog.Normal(random));
            on = shown > target + half ? 0 : shown < target - half ? 1 : on;
            told[at] = on;
            text.Append(CultureInfo.InvariantCulture, $"{at * step:0.#####},{shown:0.000000},{on}\n");
            celsius = 22 + (keep * (celsius - 22)) + ((1 - keep) * model.Gain * (at >= delay ? told[at - delay] : 0));
        }

        var found = RelayEstimate.Of(SimulatedLog.Trace(text.ToString(), null), 22);
        Assert.Null(found.Lack);
        return found.Found!;
    }
}
