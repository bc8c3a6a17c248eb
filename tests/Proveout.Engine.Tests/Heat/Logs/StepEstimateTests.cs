using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Processes recovered from simulated step logs, with the uncertainty that is stated.</summary>
public sealed class StepEstimateTests
{
    // Two standard uncertainties cover 95 % of the trials: of a hundred, 88 or fewer in less than one case of a hundred (binomial); more is no mistake.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 25)]
    [InlineData(0.8, 0)]
    [InlineData(0.8, 25)]
    public void A_hundred_noisy_logs_give_the_process_within_the_stated_uncertainty(double correlation, double fast)
    {
        var truth = new ProcessModel(180, 150, fast, 8);
        var (gain, slow, second, dead, rate, rest, wasSecond) = (0, 0, 0, 0, 0, 0, 0);
        for (var seed = 0; seed < 100; seed++)
        {
            var fit = Fit(truth, seed, correlation, 0.4);
            gain += Covers(fit.Process.Gain, truth.Gain);
            slow += Covers(fit.Process.TimeConstant, truth.TimeConstantSeconds);
            second += Covers(fit.Process.SecondTimeConstant, fast);
            dead += Covers(fit.Process.DeadTime, truth.DeadTimeSeconds);
            rate += Covers(fit.Process.Rate, truth.Gain / truth.TimeConstantSeconds);
            rest += Covers(fit.Rest, 22);
            wasSecond += fit.Process.IsSecondOrder ? 1 : 0;
        }

        var least = new[] { gain, slow, dead, rate, rest }.Min();
        Assert.True(least >= 88, $"gain {gain}, slow {slow}, dead {dead}, rate {rate}, rest {rest}");
        Assert.True(fast > 0 ? wasSecond == 100 && second >= 88 : wasSecond <= 2, $"second order {wasSecond}, covered {second}");
    }

    [Fact]
    public void Uncertainties_are_not_wider_than_the_scatter_asks_for()
    {
        var truth = new ProcessModel(180, 150, 0, 8);
        StepEstimate[] fits = [.. Enumerable.Range(0, 60).Select(seed => Fit(truth, seed, 0, 0.4))];
        double Scatter(Func<StepEstimate, double> figure) => fits.Select(figure).ToArray() is var values ? Math.Sqrt(values.Sum(value => Math.Pow(value - values.Average(), 2)) / (values.Length - 1)) : 0;
        Assert.InRange(fits.Average(fit => fit.Process.TimeConstant.Standard) / Scatter(fit => fit.Process.TimeConstant.Value), 0.75, 1.35);
        Assert.InRange(fits.Average(fit => fit.Process.Gain.Standard) / Scatter(fit => fit.Process.Gain.Value), 0.75, 1.35);
    }

    // Skogestad, Journal of Process Control 13 (2003) 291: E1 and E5 as their logs show them, a hundred times slower. E1 gives 5.5 and 0.8, that is 80 s; E5 in first order 3.716 and 1.1.
    [Theory]
    [InlineData(100, 20, 0, 5.5, 80)]
    [InlineData(110, 0, 14.8, 3.716, 110)]
    [InlineData(250, 0, 147, 0.850, 250)]
    [InlineData(150, 0, 250, 0.3, 150)]
    public void SIMC_gives_the_papers_settings_from_a_simulated_log(double slow, double fast, double dead, double gain, double integral)
    {
        var random = new Random(7);
        // Gain 1 in the paper; 100 K for full output here, so that the settings are a hundredth.
        var text = SimulatedLog.StepText(new ProcessModel(100, slow, fast, dead), 0.6, 60 + (8 * (slow + fast)) + dead, 1, () => 0.01 * SimulatedLog.Normal(random));
        var trace = SimulatedLog.Trace(text, null);
        var fit = StepStretch.Of(trace).Found!.Fit()!;
        var settings = LoopSettings.For(fit.Process, 22, 60);
        var pi = settings.Single(each => each.Rule == "SIMC, PI");
        Assert.Equal(gain, 100 * pi.Tuning.Gain, 0.02 * gain);
        Assert.Equal(integral, pi.Tuning.IntegralSeconds, 0.02 * integral);
        Assert.True(pi.IsRobust);
    }

    // The paper's E2 in second order: series 1.2987, 2, 1.2; in standard form 2.0779, 3.2, 0.75.
    [Fact]
    public void SIMC_gives_the_papers_PID_from_a_simulated_log()
    {
        var random = new Random(8);
        var text = SimulatedLog.StepText(new ProcessModel(100, 200, 120, 77), 0.6, 2500, 1, () => 0.01 * SimulatedLog.Normal(random));
        var fit = StepStretch.Of(SimulatedLog.Trace(text, null)).Found!.Fit()!;
        var pid = LoopSettings.For(fit.Process, 22, 60)[0];
        Assert.Equal("SIMC, PID", pid.Rule);
        Assert.Equal(2.077922, 100 * pid.Tuning.Gain, 0.06);
        Assert.Equal(320, pid.Tuning.IntegralSeconds, 8.0);
        Assert.Equal(75, pid.Tuning.DerivativeSeconds, 4.0);
        Assert.Equal(77, pid.ClosedLoopSeconds, 4.0);
    }

    [Fact]
    public void A_log_that_was_not_at_rest_or_never_left_alone_has_no_step()
    {
        string Log(Func<int, double> celsius, Func<int, double> output) =>
            "time [s],temp [degC],output [%]\n" + string.Concat(Enumerable.Range(0, 400).Select(second => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{second},{celsius(second):0.00},{output(second):0.0}\n")));
        Assert.Equal(StepLack.NotAtRest, StepStretch.Of(SimulatedLog.Trace(Log(second => 25 + (0.2 * second), second => second < 200 ? 0 : 50), null)).Lack);
        Assert.Equal(StepLack.NoStep, StepStretch.Of(SimulatedLog.Trace(Log(second => 25 + (0.2 * second), second => second % 90), null)).Lack);
        Assert.Equal(StepLack.NothingMoves, StepStretch.Of(SimulatedLog.Trace(Log(_ => 25, second => second < 200 ? 0 : 100), null)).Lack);
        Assert.Equal(StepLack.NoOutput, StepStretch.Of(SimulatedLog.Trace("time [s],temp [degC]\n0,20\n1,20\n", null)).Lack);
    }

    private static StepEstimate Fit(ProcessModel truth, int seed, double correlation, double deviation)
    {
        var random = new Random(seed);
        var noise = deviation * SimulatedLog.Normal(random);
        var text = SimulatedLog.StepText(truth, 0.5, 900, 2, () => noise = (correlation * noise) + (Math.Sqrt(1 - (correlation * correlation)) * deviation * SimulatedLog.Normal(random)));
        return StepStretch.Of(SimulatedLog.Trace(text, null)).Found!.Fit()!;
    }

    private static int Covers(Estimate estimate, double truth) => Math.Abs(estimate.Value - truth) <= (2 * estimate.Standard) + 1e-12 ? 1 : 0;
}
