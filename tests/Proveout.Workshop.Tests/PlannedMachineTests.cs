using Proveout.Engine.Faults;
using Proveout.Workshop.Tests.AsWired;

namespace Proveout.Workshop.Tests;

public sealed class PlannedMachineTests
{
    private static readonly PlannedMachine Machine = Samples.Pennywort;

    [Fact]
    public void The_plan_catches_every_fault_that_any_candidate_check_catches() =>
        Assert.All(Machine.Plan.Caught, fault => Assert.Contains(Machine.Plan.Checks, check => Machine.Dictionary.IsSurelyCaught(fault, check)));

    [Fact]
    public void Readings_of_a_sound_build_all_pass() =>
        Assert.All(
            Rehearsal.Readings(Machine, [], seed: 1),
            reading => Assert.Equal(Verdict.Pass, Machine.FindCheck(reading.CheckId)!.Judge(ReadingText.TryRead(reading.Text)!.Value)));

    [Fact]
    public void Every_mistake_that_the_plan_catches_is_among_the_suspects_when_it_is_made()
    {
        var missed = Machine.Plan.Caught
            .Where(fault => !Diagnosis.Explain(Machine.Dictionary, Rehearse(fault)).Any(hypothesis => hypothesis.Faults.SequenceEqual([fault])))
            .Select(fault => Machine.Dictionary.Faults[fault].Id);
        Assert.Empty(missed);
    }

    [Fact]
    public void Every_mistake_that_the_plan_catches_fails_a_check_when_it_is_made() =>
        Assert.All(Machine.Plan.Caught, fault => Assert.Contains(Rehearse(fault), Fails));

    [Fact]
    public void Every_uncovered_fault_is_listed_with_what_else_shows_it()
    {
        var view = PlanViews.Of(Machine);
        Assert.Equal(Machine.Plan.Uncaught.Count, view.Uncovered.Sum(group => group.Count));
        Assert.All(view.Uncovered, group => Assert.NotEmpty(group.OtherEvidence));
    }

    [Fact]
    public void Every_set_up_shows_its_cautions() => Assert.All(Machine.Dictionary.SetUps, setUp => Assert.NotEmpty(setUp.Cautions));

    [Fact]
    public void Every_check_of_the_plan_says_why() => Assert.All(Machine.Plan.Checks, check => Assert.NotEmpty(Machine.Explained(check).Why));

    [Fact]
    public void An_insulation_test_comes_after_every_other_reading_of_its_set_up()
    {
        var planned = AsWiredSample.Of("alderbrook").Planned;
        var checks = planned.Plan.Checks.Select(check => planned.Dictionary.Checks[check]).ToArray();
        var strained = checks.Where(check => check.DoLast).ToArray();

        Assert.NotEmpty(strained);
        Assert.All(strained, check => Assert.True(checks.SkipWhile(other => other != check).TakeWhile(other => other.SetUp == check.SetUp).All(other => other.DoLast)));
    }

    private static IReadOnlyList<Reading> Rehearse(int fault) => ReadingsFile.AsEvidence(Machine.Dictionary, Rehearsal.Readings(Machine, [fault], seed: fault));

    private static bool Fails(Reading reading) => Machine.FindCheck(reading.CheckId)!.Judge(reading.Value) == Verdict.Fail;
}
