using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests;

public sealed class TriplesViewTests
{
    private static readonly PlannedMachine Planned = Samples.Pennywort;

    [Fact]
    public void Every_three_mistakes_that_can_hurt_or_destroy_are_counted_once()
    {
        var view = TriplesView.Of(Planned);
        long dangerous = Planned.Dictionary.Faults.Count(fault => fault.Severity >= Severity.Damage);

        Assert.Equal(dangerous * (dangerous - 1) * (dangerous - 2) / 6, view.Simulated + view.Contradictory);
        Assert.InRange(view.Caught, view.Simulated / 2, view.Simulated);
        Assert.Contains(view.Masked.ToString("N0", System.Globalization.CultureInfo.InvariantCulture), view.Summary, StringComparison.Ordinal);
        Assert.All(view.Examples, example => Assert.Equal(3, example.Distinct().Count()));
    }

    [Fact]
    public void What_no_check_of_the_plan_catches_of_an_example_is_what_all_three_together_show()
    {
        foreach (var sentences in TriplesView.Of(Planned).Examples)
        {
            int[] faults = [.. sentences.Select(sentence => Enumerable.Range(0, Planned.Dictionary.Faults.Count).Single(fault => Planned.Dictionary.Faults[fault].Sentence == sentence))];
            var shown = Planned.Campaign.SimulateTogether(faults);

            Assert.All(Planned.Plan.Checks, check => Assert.False(shown[check].IsDisjointFrom(Planned.Dictionary.Checks[check].Expectation)));
        }
    }
}
