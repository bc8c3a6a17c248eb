using Proveout.Engine.Faults;
using Proveout.Engine.Motion;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Motion.Belts;

public sealed class DriveCampaignTests
{
    private static readonly FaultDictionary Dictionary = DriveCampaign.Of(Repository.Design("alderbrook").Motion);

    private static readonly IEnumerable<int> Faults = Enumerable.Range(0, Dictionary.Faults.Count);

    [Fact]
    public void Every_kind_of_mistake_is_imagined()
    {
        string[] kinds =
        [
            "belt-turned-over", "belt-wrong-side", "coil-reversed", "idlers-exchanged", "plugs-exchanged", "slack-belt", "wrong-anchor", "wrong-plane", "wrong-teeth",
        ];

        Assert.Equal(kinds, Dictionary.Faults.Select(fault => fault.Kind).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_mistake_is_surely_caught_by_some_check_with_the_machine_in_reach_of_hand() =>
        Assert.All(Faults, fault => Assert.True(Dictionary.ChecksThatCatch(fault).Any(check => !Symptom.Is(Dictionary.Checks[check])), Dictionary.Faults[fault].Id));

    [Fact]
    public void What_is_called_surely_caught_has_no_value_in_common_with_the_sound_machine() =>
        Assert.All(Faults, fault => Assert.All(Dictionary.ChecksThatCatch(fault), check =>
        {
            var (shown, sound) = (Dictionary.IntervalOf(fault, check), Dictionary.Checks[check].Expectation);
            Assert.True(shown.Low > sound.High || shown.High < sound.Low);
        }));

    [Fact]
    public void The_plan_is_short_and_leaves_nothing()
    {
        var plan = CheckPlan.Of(Dictionary, mayUse: check => !Symptom.Is(Dictionary.Checks[check]));

        Assert.Empty(plan.Uncaught);
        Assert.InRange(plan.Checks.Count, 1, Dictionary.Checks.Count / 2);
    }

    [Fact]
    public void A_mistake_read_at_every_check_is_ranked_first_or_stands_in_the_group_that_nothing_tells_apart()
    {
        var random = new Random(20261128);
        foreach (var _ in Enumerable.Range(0, 40))
        {
            var fault = random.Next(Dictionary.Faults.Count);
            Reading[] readings = [.. Enumerable.Range(0, Dictionary.Checks.Count).Where(check => Known(fault, check)).Select(check => ReadingOf(random, fault, check))];

            var first = Diagnosis.Explain(Dictionary, readings)[0];

            Assert.True(AreAlike(fault, Assert.Single(first.Faults)), Dictionary.Faults[fault].Id);
        }
    }

    // y up on the drawing for x commanded: both moves of the table for a reversed motor A, x = (a + b) / 2, y = (a - b) / 2.
    [Fact]
    public void A_reversed_coil_of_one_of_two_crossed_motors_moves_the_other_axis()
    {
        var fault = Faults.Single(index => Dictionary.Faults[index].Id == "coil-reversed:M1");

        Assert.Equal(0, Middle(fault, "jog:x:x"), 6);
        Assert.Equal(10, Math.Abs(Middle(fault, "jog:x:y")), 3);
        Assert.Equal(3, Middle(fault, "seen-way:x"));
    }

    [Fact]
    public void Every_symptom_can_be_asked_and_a_sound_machine_gives_the_first_answer()
    {
        var questions = DriveCampaign.Questions(Repository.Design("alderbrook").Motion);

        Assert.Equal(Dictionary.Checks.Where(Symptom.Is).Select(check => check.Id).Order(), questions.Select(question => question.CheckId).Order());
        Assert.All(questions, question => Assert.Equal(new ReadingInterval(question.Outcomes[0].Value, question.Outcomes[0].Value), Dictionary.Checks[Dictionary.IndexOfCheck(question.CheckId)!.Value].Expectation));
        Assert.Equal(questions.Sum(question => question.Outcomes.Count), questions.SelectMany(question => question.Outcomes).Select(outcome => outcome.Words).Distinct().Count());
    }

    [Fact]
    public void A_reversed_lift_motor_settles_no_jog_and_is_left_to_its_own_output()
    {
        var fault = Faults.Single(index => Dictionary.Faults[index].Id == "coil-reversed:M4");

        Assert.Equal(ReadingInterval.Anything, Dictionary.IntervalOf(fault, Dictionary.IndexOfCheck("jog:z:z")!.Value));
        Assert.True(Dictionary.IsSurelyCaught(fault, Dictionary.IndexOfCheck("output-turn:M4")!.Value));
    }

    // 16 teeth where 20 were meant: 0.8 of the travel.
    [Fact]
    public void A_smaller_pulley_turns_more_by_the_ratio_of_teeth()
    {
        var fault = Faults.Single(index => Dictionary.Faults[index].Id == "wrong-teeth:pulley-m1");

        Assert.Equal(16, Middle(fault, "count-teeth:pulley-m1"));
        Assert.Equal(1.25, Middle(fault, "push-turn:x:M1") / Middle("push-turn:x:M1"), 2);
    }

    [Fact]
    public void A_belt_past_the_wrong_side_of_the_beam_idler_binds_within_a_few_millimetres()
    {
        var fault = Faults.Single(index => Dictionary.Faults[index].Id == "belt-wrong-side:upper:2");
        var check = Dictionary.IndexOfCheck("push-free:y")!.Value;

        Assert.True(Dictionary.IsSurelyCaught(fault, check));
    }

    private static bool AreAlike(int fault, int found) =>
        AmbiguityGroup.Of(Dictionary, Faults).Single(group => group.Faults.Contains(fault)).Faults.Contains(found);

    private static bool Known(int fault, int check) => double.IsFinite(Dictionary.IntervalOf(fault, check).Low);

    private static Reading ReadingOf(Random random, int fault, int check)
    {
        var (interval, isCount) = (Dictionary.IntervalOf(fault, check), Symptom.Is(Dictionary.Checks[check]));
        var value = interval.Low + (random.NextDouble() * (interval.High - interval.Low));
        return new(Dictionary.Checks[check].Id, isCount || double.IsPositiveInfinity(interval.High) ? interval.Low : value);
    }

    private static double Middle(int fault, string check) => Dictionary.IntervalOf(fault, Dictionary.IndexOfCheck(check)!.Value) is var interval ? (interval.Low + interval.High) / 2 : 0;

    private static double Middle(string check) => Dictionary.Checks[Dictionary.IndexOfCheck(check)!.Value].Expectation is var interval ? (interval.Low + interval.High) / 2 : 0;
}
