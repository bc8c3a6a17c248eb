using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Electrical.Energising;

public sealed class EnergisingOrderTests
{
    private static readonly Lazy<EnergisedSample> Pennywort = new(() => EnergisedSample.Of("pennywort"));
    private static readonly Lazy<EnergisedSample> Quarrymoor = new(() => EnergisedSample.Of("quarrymoor"));

    [Fact]
    public void Supplies_are_tried_without_load_before_anything_hangs_on_them()
    {
        var first = Pennywort.Value.Stages[0];

        Assert.Contains("without load", first.Title, StringComparison.Ordinal);
        Assert.Contains(first.Checks, check => check.Check.Unit == "V" && check.Check.Expectation.Contains(24));
    }

    [Fact]
    public void A_machine_on_mains_begins_with_its_main_switch_off()
    {
        var first = Quarrymoor.Value.Stages[0];

        Assert.True(first.IsMains);
        Assert.Contains("main switch off", first.Title, StringComparison.Ordinal);
        Assert.Contains("MAINS IS ON", first.Cautions[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Heaters_come_last() => Assert.Contains("Heaters", Pennywort.Value.Stages[^1].Title, StringComparison.Ordinal);

    [Fact]
    public void Every_output_is_measured_at_its_jumper_voltage_before_its_load_is_plugged()
    {
        var outputs = Pennywort.Value.Stages.First(stage => stage.Title.Contains("unplugged", StringComparison.Ordinal));
        var fan = Assert.Single(outputs.Checks, check => check.Check.Title == "A1.FAN0+ (pins) to A1.FAN0- (pins)");

        Assert.True(fan.Check.Expectation.Contains(24));
        Assert.False(fan.Check.Expectation.Contains(5));
    }

    [Theory]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void What_would_do_harm_at_a_stage_is_excluded_before_or_listed_with_a_precaution(string name)
    {
        var sample = name == "pennywort" ? Pennywort.Value : Quarrymoor.Value;
        var excluded = sample.CaughtDead.ToHashSet();
        foreach (var stage in sample.Stages)
        {
            Assert.All(stage.Residuals, risk => Assert.DoesNotContain(risk.Fault, excluded));
            Assert.Equal(stage.Residuals.Count > 0, stage.Precautions.Count > 0);
            excluded.UnionWith(stage.Checks.SelectMany(check => check.Excludes));
        }

        // With everything plugged and commanded, each harmful fault stands in exactly one of the two lists.
        var last = sample.Stages[^1];
        Assert.All(
            Enumerable.Range(0, sample.Faults.Count).Where(fault => !sample.CaughtDead.Contains(fault) && !last.Residuals.Any(risk => risk.Fault == fault)),
            fault => Assert.True(
                sample.Stages.SkipLast(1).Any(stage => stage.Checks.Any(check => check.Excludes.Contains(fault)))
                || sample.Consequences.Of(sample.Faults[fault].Changes).Severity < Severity.Damage
                || !sample.DoesHarmLoaded(fault)));
    }

    [Theory]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Cautions_stand_in_every_stage(string name) =>
        Assert.All((name == "pennywort" ? Pennywort.Value : Quarrymoor.Value).Stages, stage => Assert.NotEmpty(stage.Cautions));

    [Theory]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void The_sound_machine_passes_every_live_check_as_an_unloaded_meter_shows_it(string name)
    {
        var sample = name == "pennywort" ? Pennywort.Value : Quarrymoor.Value;

        Assert.All(sample.Stages.SelectMany(stage => stage.Checks), check => Assert.True(check.Check.Expectation.Low <= check.Check.Expectation.High));
        Assert.Equal(
            sample.Stages.Sum(stage => stage.Checks.Count),
            sample.Stages.SelectMany(stage => stage.Checks).Select(check => check.Check.Id).Distinct().Count());
    }
}
