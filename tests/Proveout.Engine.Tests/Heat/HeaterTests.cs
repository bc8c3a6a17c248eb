using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Losses and warm-up against a textbook and closed forms.</summary>
public sealed class HeaterTests
{
    // Çengel, Heat and Mass Transfer, chapter 9: a board of 15 by 20 cm gives off 8 W from its top, emissivity 0.8, air and walls at 20 °C; it is at 42.6 °C.
    [Fact]
    public void A_board_of_the_textbook_gives_off_its_eight_watts_at_the_printed_temperature() =>
        Assert.Equal(8, new PlateLoss(0.15, 0.20, 0.001, 0.8, null).TopWatts(42.6, 20), 0.25);

    // The same correlations with other tables of air: 0.3 by 0.3 m at 100 °C in 25 °C, emissivity 0.9, gives off 104.1 W from its top; tables differ by 3 %.
    [Fact]
    public void A_hot_plate_loses_by_its_top_what_hand_arithmetic_says() =>
        Assert.Equal(104.1, new PlateLoss(0.3, 0.3, 0.008, 0.9, null).TopWatts(100, 25), 0.03 * 104.1);

    [Fact]
    public void Insulation_takes_most_of_the_loss_below_away()
    {
        var (bare, lagged) = (new PlateLoss(0.3, 0.3, 0.008, 0.9, null), new PlateLoss(0.3, 0.3, 0.008, 0.9, 0.04 / 0.02));
        Assert.True(lagged.UndersideWatts(100, 25) < 0.3 * bare.UndersideWatts(100, 25));
    }

    // Closed form: C 1307.83 J/K, 1.5 W/K and 600 W go from 25 °C to 100 °C in 181.037 s.
    [Fact]
    public void A_lumped_body_warms_up_as_the_exponential_does()
    {
        var heater = new HeaterTrial(600, 1307.83, new LumpedLoss(1.5), 1, 1e-6, 1, 25);
        Assert.Equal(181.037, HeatCurve.Of(heater, _ => 1, 25, 400, 0.5).SecondsTo(100), 0.01);
    }

    // A sensor with a lag behind a body that rises at a steady rate stays behind by rate times lag, once its start is forgotten.
    [Fact]
    public void A_sensor_lags_by_rate_times_lag()
    {
        var heater = new HeaterTrial(100, 100, new LumpedLoss(0), 1, 8, 1, 20);
        var curve = HeatCurve.Of(heater, _ => 1, 20, 200, 0.5);
        Assert.Equal(8, curve.Real[^1] - curve.Shown[^1], 1e-6);
    }

    [Fact]
    public void Power_that_holds_a_temperature_is_the_loss_there() =>
        Assert.Equal(0.375, new HeaterTrial(200, 100, new LumpedLoss(1), 1, 1, 1, 25).HoldShare(100), 1e-12);

    private static readonly HeaterDesign Plate = new(
        "plate", Between.Around(500, 0.1), Between.Around(HeaterDesign.OfAluminiumPlate(0.3, 0.3, 0.006), 0.05), new PlateLoss(0.3, 0.3, 0.006, 0.8, 2), new(0.8, 1.25), new(6, 15), new(18, 26), 100);

    private static readonly HeaterDesign Nozzle = new(
        "nozzle", Between.Around(60, 0.12), Between.Around(28, 0.15), new LumpedLoss(0.09), new(0.8, 1.25), new(3, 7), new(18, 26), 220);

    [Fact]
    public void Any_sound_heater_keeps_within_the_predicted_curve()
    {
        foreach (var design in new[] { Plate, Nozzle })
        {
            var span = 1.5 * WarmUp.SlowestSeconds(design);
            var (least, most) = WarmUp.Limits(design, span);
            var random = new Random(3);
            for (var trial = 0; trial < 60; trial++)
            {
                double[] shares = [.. Enumerable.Range(0, 6).Select(_ => random.NextDouble())];
                var heater = design.At(shares);
                var curve = HeatCurve.Of(heater, _ => 1, heater.AmbientCelsius, span, least.StepSeconds);
                for (var at = 0; at < curve.Shown.Count; at++)
                    Assert.InRange(curve.Shown[at], least.Shown[at] - 1e-6, most.Shown[at] + 1e-6);
            }
        }
    }

    [Fact]
    public void A_sound_log_passes_every_reading_and_is_no_suspect()
    {
        var dictionary = HeaterCampaign.Of(Plate);
        var heater = Plate.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
        var curve = HeatCurve.Of(heater, _ => 1, heater.AmbientCelsius, 2000, 1);
        double[] read = [0.1, curve.ShownAt(84) - curve.Shown[0], 0.4, curve.SecondsTo(96.3), 100 * heater.HoldShare(100)];
        foreach (var (index, value) in read.Index())
            Assert.Equal(Verdict.Pass, dictionary.Checks[index].Judge(value));
    }

    [Theory]
    [InlineData("power-fourfold", Severity.Fire)]
    [InlineData("sensor-out", Severity.Fire)]
    [InlineData("sensors-exchanged", Severity.Fire)]
    [InlineData("stuck-on", Severity.Fire)]
    [InlineData("power-half", Severity.DoesNotWork)]
    public void A_warm_up_surely_shows_the_mistake(string id, Severity severity)
    {
        var dictionary = HeaterCampaign.Of(Plate);
        var (index, fault) = dictionary.Faults.Index().Single(item => item.Item.Id == id);
        Assert.Equal(severity, fault.Severity);
        Assert.NotEmpty(dictionary.ChecksThatCatch(index));
    }

    [Fact]
    public void A_heater_of_twice_the_power_is_named_first_from_its_log()
    {
        var dictionary = HeaterCampaign.Of(Plate);
        var heater = Plate.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]) with { Watts = 1000 };
        var curve = HeatCurve.Of(heater, _ => 1, heater.AmbientCelsius, 2000, 1);
        var first = Diagnosis.Explain(
            dictionary,
            [new("rise-while-off", 0), new("early-rise", curve.ShownAt(84) - curve.Shown[0]), new("rise-of-others", 1), new("time-to-end", curve.SecondsTo(96.3)), new("hold-share", 100 * heater.HoldShare(100))])[0];
        Assert.Equal("power-double", dictionary.Faults[Assert.Single(first.Faults)].Id);
    }

    // A vignette of common practice: 500 W and 1744 J/K should rise by 0.287 K/s, and do by 0.14; it takes much longer than it should and holds at twice the share.
    [Fact]
    public void A_plate_that_warms_up_at_half_the_slope_has_half_its_power_and_no_draught()
    {
        var design = Plate with { JoulesPerKelvin = Between.Around(1744, 0.05) };
        var dictionary = HeaterCampaign.Of(design);
        var times = new WarmUpReadings(design);
        var heater = design.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]) with { Watts = 250 };
        var curve = HeatCurve.Of(heater, _ => 1, heater.AmbientCelsius, 6000, 1);
        Assert.Equal(0.14, (curve.ShownAt(80) - curve.ShownAt(50)) / 30, 0.015);

        var explanations = Diagnosis.Explain(
            dictionary, [new("rise-while-off", 0), new("early-rise", curve.ShownAt(times.EarlySeconds) - curve.Shown[0]), new("rise-of-others", 0.3), new("time-to-end", curve.SecondsTo(times.EndCelsius)), new("hold-share", 100 * heater.HoldShare(100))]);

        // A mat that has come off gives off as little to the plate: a look and the ohms at the plug tell the two apart.
        Assert.Equal(["heater-off-body", "power-half"], explanations.Take(2).Select(found => string.Join('+', found.Faults.Select(index => dictionary.Faults[index].Id))).Order());
        Assert.True(explanations.Where(found => found.Faults.Any(index => dictionary.Faults[index].Id is "air-on-body" or "insulation-missing")).Sum(found => found.Probability) < 0.05);
    }

    // Found on reading: twice the power AND half the power together explained a log that neither explains.
    [Fact]
    public void A_heater_is_never_suspected_of_two_powers_at_once()
    {
        var dictionary = HeaterCampaign.Of(Plate);
        double Of(string mistake, int check)
        {
            var shown = dictionary.ResponseOf(dictionary.Faults.Index().Single(item => item.Item.Id == mistake).Index).At(check)!.Value;
            return (shown.Low + shown.High) / 2;
        }

        var explanations = Diagnosis.Explain(dictionary, [new("early-rise", Of("power-double", 1)), new("hold-share", Of("power-half", 4))]);
        Assert.DoesNotContain(explanations, found => found.Faults.Count(fault => dictionary.Faults[fault].Kind == "other-power") > 1);
    }

    [Theory]
    [InlineData("time-to-end", "never")]
    [InlineData("hold-share", "beyond what can be read")]
    public void A_reading_without_end_is_not_told_as_a_meter_tells_it(string check, string words)
    {
        var dictionary = HeaterCampaign.Of(Plate);
        Assert.Equal(words, CheckWords.Shown(dictionary.Checks[dictionary.IndexOfCheck(check)!.Value], ReadingInterval.OverRange));
    }

    [Fact]
    public void The_guard_stops_no_sound_heater_and_nearly_every_one_whose_sensor_is_out()
    {
        foreach (var design in new[] { Plate, Nozzle })
        {
            var guard = GuardThresholds.For(design)!;
            Assert.Equal(0, guard.FalseAlarms.Tripped);
            Assert.InRange(guard.Catches.Tripped, 0.98 * guard.Catches.Tried, guard.Catches.Tried);
            Assert.InRange(guard.LeastRiseKelvin, 0.3, 20);
        }
    }

    // Rule of three and the Wilson interval by hand: 0 of 1000 is at most 0.3 %; 4 of 1000 at most 0.888 %.
    [Fact]
    public void Shares_come_with_their_upper_limit()
    {
        Assert.Equal(0.003, new GuardCount(1000, 0).MostShare, 1e-12);
        Assert.Equal(0.00888, new GuardCount(1000, 996).MostMissed, 1e-5);
    }

    [Fact]
    public void Settings_made_before_the_first_heat_are_robust_at_every_corner_and_hardly_overshoot()
    {
        foreach (var design in new[] { Plate, Nozzle })
        {
            var settings = HeaterSettings.For(design)!;
            Assert.InRange(settings.WorstSensitivity, 1.0, 1.8);
            Assert.InRange(settings.WorstOvershootKelvin, 0, 0.08 * design.TargetCelsius);
            Assert.NotNull(settings.Response.SettledSeconds);
        }
    }

    // Closed form: 60 W on 28 J/K that loses 0.09 W/K: gain 667 K for full output, time constant 311 s.
    [Fact]
    public void The_process_of_a_block_is_that_of_its_capacity_and_loss()
    {
        var model = HeaterSettings.For(Nozzle with { LossShare = new(1, 1), SeenShare = new(1, 1) })!.Model;
        Assert.Equal(60 / 0.09, model.Gain, 0.5);
        Assert.Equal(28 / 0.09, model.TimeConstantSeconds, 0.5);
    }

    [Fact]
    public void A_heater_that_cannot_hold_its_target_gets_no_settings() =>
        Assert.Null(HeaterSettings.For(Nozzle with { Watts = new(10, 12) }));
}
