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
        Assert.Equal(TriplesView.CountOf(Planned), view.Simulated + view.Contradictory);
        Assert.InRange(view.Caught, view.Simulated / 2, view.Simulated);
        Assert.Contains(view.Masked.ToString("N0", System.Globalization.CultureInfo.InvariantCulture), view.Summary, StringComparison.Ordinal);
        Assert.All(view.Examples, example => Assert.Equal(3, example.Mistakes.Distinct().Count()));
    }

    [Fact]
    public void More_than_somebody_waits_for_at_a_page_are_refused_with_their_number()
    {
        var most = TriplesView.CountOf(Planned);

        Assert.NotNull(new PlanDesk(most).ThreesOf(Planned.Machine).Value);
        var refused = new PlanDesk(most - 1).ThreesOf(Planned.Machine);
        Assert.Null(refused.Value);
        Assert.Contains(most.ToString("N0", System.Globalization.CultureInfo.InvariantCulture), Assert.Single(refused.Diagnostics).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_check_of_the_plan_catches_an_example_made_together_so_that_it_says_what_shows_each_of_the_three_instead()
    {
        foreach (var example in TriplesView.Of(Planned).Examples)
        {
            int[] faults = [.. example.Mistakes.Select(sentence => Enumerable.Range(0, Planned.Dictionary.Faults.Count).Single(fault => Planned.Dictionary.Faults[fault].Sentence == sentence))];
            var shown = Planned.Campaign.SimulateTogether(faults);

            Assert.Equal(faults.Select(fault => Planned.Dictionary.Faults[fault].OtherEvidence).Distinct(), example.OtherEvidence);
            Assert.All(Planned.Plan.Checks, check => Assert.False(shown[check].IsDisjointFrom(Planned.Dictionary.Checks[check].Expectation)));
        }
    }

    [Fact]
    public void What_to_mind_before_every_set_up_stands_before_what_shows_them()
    {
        var view = TriplesView.Of(Planned);

        Assert.NotEmpty(view.Cautions);
        Assert.All(view.Cautions, caution => Assert.All(Planned.Plan.Checks, check =>
            Assert.Contains(caution, Planned.Dictionary.SetUps.Single(setUp => setUp.Id == Planned.Dictionary.Checks[check].SetUp).Cautions)));
    }
}
