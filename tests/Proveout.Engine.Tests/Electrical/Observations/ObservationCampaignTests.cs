using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

public sealed class ObservationCampaignTests(ITestOutputHelper output)
{
    public static TheoryData<string> Samples => [.. Repository.SampleNames];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_mistake_that_only_eye_or_hand_shows_is_surely_caught_by_its_observation(string sample)
    {
        var dictionary = Walk(sample).Run();

        Assert.NotEmpty(dictionary.Faults);
        Assert.All(Enumerable.Range(0, dictionary.Faults.Count), fault => Assert.Single(dictionary.ChecksThatCatch(fault)));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_plan_of_a_walk_catches_every_mistake_of_it(string sample)
    {
        var dictionary = Walk(sample).Run();
        var plan = CheckPlan.Of(dictionary, onlyGreedy: true);

        Assert.Empty(plan.Uncaught);
        output.WriteLine($"{sample}: {dictionary.Faults.Count} mistakes, {dictionary.Checks.Count} observations, {plan.Choice.CostSeconds / 60:0} minutes.");
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_person_stands_at_each_place_once_and_switches_on_last(string sample)
    {
        var walk = Walk(sample);
        var order = walk.Checks.Select(check => check.SetUp).ToArray();

        Assert.Equal(walk.SetUps.Select(setUp => setUp.Id), order.Distinct());
        Assert.Equal(walk.SetUps.Count, order.Zip(order.Skip(1), (one, two) => one == two ? 0 : 1).Sum() + 1);
        Assert.All(walk.Checks, check => Assert.Equal(check.Kind == ObservationKinds.Log, check.SetUp == walk.SetUps[^1].Id));
        Assert.All(walk.SetUps, setUp => Assert.NotEmpty(setUp.Cautions));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_observation_says_what_good_and_bad_look_like_by_which_number_and_from_where(string sample) =>
        Assert.All(Walk(sample).Checks, check =>
        {
            Assert.Contains(check.Kind, ObservationKinds.All);
            Assert.Matches(@"^Good: .+\. Bad: .+\. Criterion: .+\. \(.+\)\.$", check.Why);
            Assert.True(check.Title.Length > 0 && check.Instruction.EndsWith('.') && check.CostSeconds > 0, check.Id);
        });

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_mistake_has_an_identifier_of_its_own_and_full_sentences(string sample)
    {
        var faults = Walk(sample).Faults;

        Assert.Distinct(faults.Select(fault => fault.Id));
        Assert.All(faults, fault => Assert.True(
            fault.Sentence.EndsWith('.') && fault.Consequence.EndsWith('.') && fault.OtherEvidence.EndsWith('.') && fault.Prior is > 0 and < 1 && fault.Subjects.Count > 0, fault.Id));
    }

    [Fact]
    public void A_tug_is_read_in_newtons_and_must_hold_the_pull_of_its_section()
    {
        var tugs = Walk("alderbrook").Checks.Where(check => check.Kind == ObservationKinds.Tug && check.Unit == "N").ToArray();

        Assert.Contains(tugs, check => check.Expectation.Low == 40 && check.Judge(45) == Verdict.Pass && check.Judge(20) == Verdict.Fail);
        Assert.Contains(tugs, check => check.Expectation.Low == 5);
    }

    [Fact]
    public void A_machine_without_mains_has_no_mistake_of_mains()
    {
        string[] kinds = ["residual-current-device-absent", "live-part-touchable", "supply-range-wrong", "leakage-adds-up", "colour-misused"];

        Assert.Empty(Walk("pennywort").Faults.Select(fault => fault.Kind).Intersect(kinds));
        Assert.Equal(kinds.Length, Walk("alderbrook").Faults.Select(fault => fault.Kind).Intersect(kinds).Count());
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_no_reading_surely_catches_is_shown_by_an_observation_at_its_place(string sample)
    {
        var campaign = new WiringCampaign(Repository.Design(sample));
        var dictionary = campaign.Run();
        var uncaught = campaign.Faults.Where((_, index) => !dictionary.ChecksThatCatch(index).Any()).ToArray();
        var coverage = ObservationCoverage.Of(new ObservationCampaign(campaign.Context), uncaught);
        foreach (var kind in coverage)
            output.WriteLine($"{sample} {kind.Kind}: {kind.Faults} left, {kind.Shown} shown by {kind.Checks.Count} observations");

        Assert.Equal(uncaught.Length, coverage.Sum(kind => kind.Faults));
        Assert.All(coverage, kind => Assert.Equal(kind.Faults, kind.Shown));
    }

    [Fact]
    public void The_kinds_of_a_machine_file_are_those_of_the_registers()
    {
        var registered = WiringFaultRules.All.Select(rule => rule.Kind).Concat(ObservationRules.Mistakes.Select(mistake => mistake.Kind)).ToArray();

        Assert.Distinct(registered);
        Assert.Equal(registered, MistakeKinds.All);
    }

    [Fact]
    public void Observations_point_only_at_kinds_of_wiring_mistakes_that_exist() =>
        Assert.Empty(ObservationRules.All.SelectMany(observation => observation.Shows).Except(WiringFaultRules.All.Select(rule => rule.Kind)));

    private static ObservationCampaign Walk(string sample) => new(new WiringContext(WiringNetworkBuilder.Build(Repository.Design(sample))));
}
