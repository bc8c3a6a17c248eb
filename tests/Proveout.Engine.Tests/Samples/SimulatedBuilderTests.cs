using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Samples;

/// <summary>
/// A thousand builders who make one or two mistakes, drawn by their rates, and follow the check worth most. No procedure of checks that tell at
/// most b bits each finds one of groups with entropy H in fewer than H / b checks on average (Shannon 1948): the mean is held against that bound.
/// </summary>
[Collection(nameof(AloneCollection))]
public sealed class SimulatedBuilderTests
{
    [Theory]
    [InlineData("pennywort", 700, 3)]
    [InlineData("alderbrook", 300, 15)]
    public void Builders_find_their_mistakes_in_few_checks(string sample, int builders, int everyHowManyMakesTwo)
    {
        var trials = Trials(sample, builders, everyHowManyMakesTwo);
        var single = trials.Where(trial => trial.Made.Count == 1).ToArray();
        var two = trials.Where(trial => trial.Made.Count == 2).ToArray();

        Assert.All(trials, trial => Assert.True(double.IsFinite(trial.BitsOnceOff), $"Mistake {trial.Made[0]} put no reading off."));
        Assert.All(single, trial => Assert.True(trial.WasAlwaysSuspected, $"Mistake {trial.Made[0]} was excluded."));
        Assert.InRange(single.Average(trial => trial.Rank == 1 ? 1 : 0), 0.93, 1);
        Assert.InRange(single.Average(trial => trial.Rank), 1, 1.2);
        Assert.InRange(single.Average(trial => trial.ChecksOnceOff), 0, 4 * Bound(single));
        Assert.InRange(two.Average(trial => trial.WasAlwaysSuspected ? 1 : 0), 0.95, 1);
        Assert.InRange(two.Average(trial => trial.Rank == 1 ? 1 : 0), 0.8, 1);
    }

    private static double Bound(BuilderTrial[] trials) => trials.Average(trial => trial.BitsOnceOff) / trials.Max(trial => trial.MostBits);

    private static BuilderTrial[] Trials(string sample, int builders, int everyHowManyMakesTwo)
    {
        var campaign = new WiringCampaign(Repository.Design(sample));
        var simulated = new SimulatedBuilders(campaign.Run(), () => new TogetherSimulator(campaign));
        return [.. Enumerable.Range(0, builders).AsParallel().AsOrdered().Select(seed => simulated.Try(seed % everyHowManyMakesTwo == 0 ? 2 : 1, seed))];
    }
}
