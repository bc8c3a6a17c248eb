using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>What two logs of a heater say of the difference between them.</summary>
public sealed class LogComparisonTests
{
    private static readonly HeaterTrial Nozzle = SimulatedLog.Nozzle.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);

    [Fact]
    public void A_sock_that_saves_a_fifth_is_beyond_noise_and_two_logs_of_one_heater_are_not()
    {
        var before = Log(Nozzle, 1);
        var after = Log(Nozzle with { LossShare = 0.8 * Nozzle.LossShare }, 2);
        var hold = LogComparison.Of(before, after).Single(figure => figure.Figure == LogFigure.Hold);
        Assert.True(hold.Difference.IsBeyondNoise);
        Assert.Equal(-0.2, hold.Difference.Value / hold.Before.Value, 0.02);
        Assert.False(LogComparison.Of(before, Log(Nozzle, 3)).Single(figure => figure.Figure == LogFigure.Hold).Difference.IsBeyondNoise);
    }

    [Fact]
    public void Two_logs_of_one_heater_differ_beyond_noise_in_few_cases()
    {
        var beyond = new Dictionary<LogFigure, int>();
        for (var seed = 0; seed < 40; seed++)
            foreach (var figure in LogComparison.Of(Log(Nozzle, 2 * seed), Log(Nozzle, (2 * seed) + 1)))
                beyond[figure.Figure] = beyond.GetValueOrDefault(figure.Figure) + (figure.Difference.IsBeyondNoise ? 1 : 0);
        Assert.Contains(LogFigure.Rise, beyond.Keys);
        Assert.All(beyond, count => Assert.True(count.Value <= 6, $"{count.Key}: {count.Value}"));
    }

    [Fact]
    public void A_stronger_heater_rises_further_and_sooner()
    {
        var figures = LogComparison.Of(Log(Nozzle, 1), Log(Nozzle with { Watts = 1.1 * Nozzle.Watts }, 2));
        var rise = figures.Single(figure => figure.Figure == LogFigure.Rise);
        Assert.True(rise.Difference is { IsBeyondNoise: true, Value: > 0 });
        Assert.True(figures.Single(figure => figure.Figure == LogFigure.Time).Difference is { IsBeyondNoise: true, Value: < 0 });
    }

    private static HeaterTrace Log(HeaterTrial heater, int seed) => SimulatedLog.Trace(SimulatedLog.WarmUpText(heater, 220, new Random(seed), 30, 700));
}
