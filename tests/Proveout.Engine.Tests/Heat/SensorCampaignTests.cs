using Proveout.Engine.Faults;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Mistakes with sensors, in the dictionary of the shared engine.</summary>
public sealed class SensorCampaignTests
{
    private static readonly SensorChannel Nozzle = new(SensorTypes.Find("ntc-100k-3950")!, new SensorInput(4700, 0.01), 220);
    private static readonly FaultDictionary Dictionary = SensorCampaign.Of(Nozzle);

    private static Fault FaultOf(string id) => Dictionary.Faults.Single(fault => fault.Id == id);

    // By hand from both betas: a part of beta 4267 at 200 °C has 502.5 Ω, which a curve of beta 3950 calls 223 °C; the other way round 744.6 Ω are called 180 °C.
    [Theory]
    [InlineData("ntc-100k-4267", "ntc-100k-3950", 200, 223)]
    [InlineData("ntc-100k-3950", "ntc-100k-4267", 200, 180)]
    public void The_wrong_beta_shows_what_arithmetic_says(string fitted, string set, double real, double shown) =>
        Assert.Equal(shown, new SensorSetting(SensorTypes.Find(set)!.Curve, 4700).ShownAt(SensorTypes.Find(fitted)!.Curve.OhmsAt(real), 4700), 0.5);

    // By hand: 100 kΩ on 4.7 kΩ, reckoned with 2.2, 1 and 10 kΩ, show 43, 64 and 9 °C at 25 °C.
    [Theory]
    [InlineData(2200, 43)]
    [InlineData(1000, 64)]
    [InlineData(10_000, 9)]
    public void The_wrong_pull_up_shows_when_cold(double pullUp, double shown) =>
        Assert.Equal(shown, (Nozzle.Setting with { PullUpOhms = pullUp }).ShownAt(100e3, 4700), 0.5);

    [Fact]
    public void A_platinum_sensor_read_as_a_thermistor_shows_a_hot_nozzle_when_cold() =>
        Assert.Equal(179, Nozzle.Setting.ShownAt(SensorTypes.Find("pt1000")!.Curve.OhmsAt(25), 4700), 1.0);

    [Fact]
    public void A_sensor_that_makes_the_heater_run_hotter_than_shown_is_graded_fire()
    {
        Assert.Equal(Severity.Fire, FaultOf("curve-set-wrong:ntc-100k-4267").Severity);
        Assert.Equal(Severity.Fire, FaultOf("sensor-open").Severity);
        Assert.Equal(Severity.DoesNotWork, FaultOf("sensor-short").Severity);
        Assert.Equal(Severity.DoesNotWork, FaultOf("pull-up-set-wrong:1000").Severity);
    }

    // Its resistance rises as it is heated, and the controller sees a thermistor grow colder.
    [Fact]
    public void A_platinum_sensor_in_place_of_a_thermistor_heats_without_end() =>
        Assert.Equal(Severity.Fire, FaultOf("sensor-of-another-type:pt1000").Severity);

    // A vignette of common practice: right when cold, 57 °C shown at 60 °C, 200 °C shown at 223 °C. A pull-up set wrong would show when cold.
    [Fact]
    public void A_channel_that_is_right_when_cold_and_three_kelvin_low_when_warm_is_set_to_another_curve()
    {
        var set = Nozzle.Setting with { Curve = SensorTypes.Find("ntc-100k-4267")!.Curve };
        double Error(double celsius) => set.ShownAt(Nozzle.Type.Curve.OhmsAt(celsius), 4700) - celsius;
        Assert.Equal((-2.9, -23), (Math.Round(Error(60), 1), Math.Round(Error(223))));

        var first = Diagnosis.Explain(Dictionary, [new("cold-compare", Error(24)), new("warm-compare", Error(60))])[0];

        Assert.Equal("curve-set-wrong:ntc-100k-4267", Dictionary.Faults[Assert.Single(first.Faults)].Id);
    }

    [Fact]
    public void A_sound_channel_at_the_ends_of_its_tolerances_passes_every_check()
    {
        foreach (var curve in Nozzle.Type.Corners)
            foreach (var pullUp in new[] { 4700 * 0.99, 4700 * 1.01 })
                foreach (var (check, celsius) in new[] { ("cold-compare", 12.3), ("warm-compare", 61.7), ("hot-compare", 98.6) })
                {
                    var error = Nozzle.Setting.ShownAt(curve.OhmsAt(celsius), pullUp) - celsius;
                    Assert.Equal(Verdict.Pass, Dictionary.Checks[Dictionary.IndexOfCheck(check)!.Value].Judge(error));
                }
    }

    [Fact]
    public void Every_mistake_at_the_ends_of_its_tolerances_shows_what_the_dictionary_says()
    {
        var check = Dictionary.IndexOfCheck("warm-compare")!.Value;
        foreach (var type in SensorTypes.All.Where(type => type.Id != Nozzle.Type.Id))
        {
            var fault = Dictionary.Faults.Index().Single(item => item.Item.Id == $"sensor-of-another-type:{type.Id}").Index;
            foreach (var curve in type.Corners)
                for (var celsius = 55.0; celsius <= 65; celsius += 0.37)
                    Assert.True(Dictionary.IntervalOf(fault, check).Contains(Nozzle.Setting.ShownAt(curve.OhmsAt(celsius), 4700) - celsius));
        }
    }

    [Fact]
    public void A_plan_catches_every_mistake_that_would_overheat_but_a_joint_that_shows_only_when_hot()
    {
        var plan = CheckPlan.Of(Dictionary);
        Assert.Equal(["poor-joint"], plan.Uncaught.Select(fault => Dictionary.Faults[fault]).Where(fault => fault.Severity == Severity.Fire).Select(fault => fault.Id));
        Assert.InRange(plan.Checks.Count, 1, 3);
    }

    [Fact]
    public void The_wrong_beta_is_named_first_when_60_degrees_show_too_little()
    {
        var shown = (Nozzle.Setting with { Curve = SensorTypes.Find("ntc-100k-4267")!.Curve }).ShownAt(Nozzle.Type.Curve.OhmsAt(60), 4700) - 60;
        var first = Diagnosis.Explain(Dictionary, [new Reading("ohms-at-room", 100e3 * 1.05), new Reading("cold-compare", 0.1), new Reading("warm-compare", shown)])[0];
        Assert.Equal("curve-set-wrong:ntc-100k-4267", Dictionary.Faults[Assert.Single(first.Faults)].Id);
    }
}
