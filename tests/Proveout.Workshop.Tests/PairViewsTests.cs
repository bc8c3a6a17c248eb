using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests;

public sealed class PairViewsTests
{
    private static readonly PlannedMachine Machine = Samples.Pennywort;
    private static readonly PairsView View = PlanViews.Of(Machine).Pairs;

    [Fact]
    public void Every_pair_is_caught_or_hidden_or_left_to_the_eye()
    {
        Assert.Equal(View.Simulated, View.Caught + View.Masked + View.LeftToTheEye);
        Assert.Equal(View.Masked, View.Groups.Sum(group => group.Count));
    }

    [Fact]
    public void The_most_dangerous_pairs_stand_first_each_with_what_shows_it_instead()
    {
        Assert.Equal(View.Groups.Select(group => group.Severity).OrderDescending(), View.Groups.Select(group => group.Severity));
        Assert.All(View.Groups, group => Assert.All(group.OtherEvidence, Assert.NotEmpty));
    }

    [Fact]
    public void Two_pairs_of_ends_exchanged_at_both_ends_of_two_conductors_are_called_the_same_circuit() =>
        Assert.Contains(View.Groups, group =>
            group.Example.Contains("W57", StringComparison.Ordinal)
            && group.Example.Contains("W58", StringComparison.Ordinal)
            && group.Reading.Contains("the same circuit", StringComparison.Ordinal));

    [Fact]
    public void Two_exchanges_that_leave_the_same_circuit_do_nothing_together_though_each_alone_does()
    {
        var same = View.Groups.Where(group => group.Reading.Contains("the same circuit", StringComparison.Ordinal)).ToArray();
        Assert.Contains(same, group => group is { Severity: Severity.Hidden, AloneSeverity: > Severity.Hidden });
    }

    [Fact]
    public void The_plan_counts_what_two_mistakes_do_together_and_what_each_does_when_the_other_is_mended()
    {
        Assert.All(Machine.Pairs.Masked, pair =>
        {
            var alone = Machine.Together.AloneWorst(pair.One, pair.Two);
            Assert.True(pair.Severity >= alone);
            Assert.True(pair.Severity >= Machine.Together.Of(pair.One, pair.Two).Severity || alone >= Severity.Damage);
        });
        Assert.DoesNotContain(Machine.Pairs.Masked, pair => pair.AsksForCheck);
    }

    [Fact]
    public void Checks_that_single_mistakes_alone_would_not_ask_for_are_marked()
    {
        var alone = CheckPlan.Of(Machine.Dictionary).Checks.Select(check => Machine.Dictionary.Checks[check].Id);
        var marked = PlanViews.Of(Machine).Groups.SelectMany(group => group.Checks).Where(check => check.IsForPairs).Select(check => check.Check.Id);

        Assert.NotEmpty(View.AddedChecks);
        Assert.Equal(View.AddedChecks, marked);
        Assert.Empty(View.AddedChecks.Intersect(alone));
    }
}
