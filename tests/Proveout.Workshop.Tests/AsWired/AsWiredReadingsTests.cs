namespace Proveout.Workshop.Tests.AsWired;

public sealed class AsWiredReadingsTests
{
    public static TheoryData<string> Samples => AsWiredSample.Names;

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_readings_are_those_of_the_checks_of_the_plan(string sample)
    {
        var built = AsWiredSample.Of(sample);

        Assert.Equal(
            built.Planned.Plan.Checks.Select(check => built.Planned.Dictionary.Checks[check].Id).Order(),
            built.Readings.Select(reading => reading.CheckId).Order());
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_likeliest_suspects_hold_every_mistake_that_a_check_can_tell(string sample)
    {
        var built = AsWiredSample.Of(sample);
        var caught = built.Mistakes.Where(built.IsCaught).Select(mistake => mistake.Id).ToArray();

        var suspects = ReadingsDiagnosis.Of(built.Planned, built.Readings).Suspects;

        Assert.NotEmpty(caught);
        Assert.Contains(suspects.Take(3), suspect => caught.All(suspect.FaultIds.Contains));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Without_the_mistakes_no_reading_is_off(string sample)
    {
        var built = AsWiredSample.Of(sample);
        var sound = RehearsedBuild.Readings(built.Planned, [], seed: 3).Value!;

        Assert.Empty(ReadingsDiagnosis.Of(built.Planned, sound).Failed);
    }

    [Fact]
    public void Exchanged_plugs_of_pennywort_are_left_to_the_eye()
    {
        var built = AsWiredSample.Of("pennywort");
        var exchanged = built.Mistakes.Single(mistake => mistake.Kind == "connectors-exchanged");

        Assert.False(built.IsCaught(exchanged));
        Assert.Contains(PlanViews.Of(built.Planned).Uncovered, group => group.OtherEvidence == exchanged.OtherEvidence);
    }

    [Fact]
    public void A_mistake_of_another_machine_is_refused_with_names_of_its_kind()
    {
        var built = AsWiredSample.Of("pennywort");

        var refused = RehearsedBuild.Readings(built.Planned, ["conductor-missing:W999"], seed: 1);

        Assert.Contains("such as `conductor-missing:W", Assert.Single(refused.Diagnostics).Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_mistakes_at_one_thing_are_refused()
    {
        var built = AsWiredSample.Of("pennywort");

        var refused = RehearsedBuild.Readings(built.Planned, ["end-on-neighbour:W43:B3.C:B3.NO", "end-on-neighbour:W43:B3.C:B2.NC"], seed: 1);

        Assert.Equal("contradicting-mistakes", Assert.Single(refused.Diagnostics).Rule);
    }
}
