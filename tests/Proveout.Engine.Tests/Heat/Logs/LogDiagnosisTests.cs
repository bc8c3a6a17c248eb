using Proveout.Engine.Faults;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Logs of sound and of mistaken heaters, simulated, read and diagnosed.</summary>
public sealed class LogDiagnosisTests
{
    private static readonly FaultDictionary OfPlate = HeaterCampaign.Of(SimulatedLog.Plate);
    private static readonly FaultDictionary OfNozzle = HeaterCampaign.Of(SimulatedLog.Nozzle);

    public static TheoryData<string, string> Mistakes
    {
        get
        {
            TheoryData<string, string> all = [];
            foreach (var design in new[] { SimulatedLog.Plate, SimulatedLog.Nozzle })
                foreach (var mistake in HeaterMistakes.Of(design))
                    all.Add(design.Name, mistake.Id);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void Each_mistakes_log_is_diagnosed_to_a_set_that_has_it(string body, string id)
    {
        var design = Design(body);
        var mistake = HeaterMistakes.Of(design).Single(each => each.Id == id);
        var told = 0;
        // A plate's loss takes longer to compute.
        var trials = body == "plate" ? 1 : 5;
        for (var seed = 0; seed < trials; seed++)
        {
            var random = new Random(seed);
            var text = SimulatedLog.WarmUpText(
                SimulatedLog.Draw(mistake.Left, random), design.TargetCelsius, random, 140, 140 + (5 * WarmUp.SlowestSeconds(design)), mistake.HeatsWhenOff, mistake.IsSeenElsewhere);
            var (dictionary, readings) = Take(design, text);
            var posterior = Diagnosis.Of(dictionary, readings);
            var fault = dictionary.Faults.Index().Single(item => item.Item.Id == id).Index;
            Assert.NotEmpty(readings);
            foreach (var reading in readings)
                Assert.True(dictionary.IntervalOf(fault, dictionary.IndexOfCheck(reading.CheckId)!.Value).Contains(reading.Value), $"{id}, seed {seed}: {reading} is outside {dictionary.IntervalOf(fault, dictionary.IndexOfCheck(reading.CheckId)!.Value)}.");
            if (!posterior.IsOff)
                continue;
            told++;
            Assert.Contains(posterior.Hypotheses, hypothesis => hypothesis.Faults.SequenceEqual([fault]));
        }

        // What no reading surely shows may hide in the tolerances; all else is told every time.
        var predicted = body == "plate" ? OfPlate : OfNozzle;
        if (predicted.ChecksThatCatch(predicted.Faults.Index().Single(item => item.Item.Id == id).Index).Any())
            Assert.Equal(trials, told);
    }

    [Theory]
    [InlineData("plate", 8)]
    [InlineData("nozzle", 60)]
    public void No_sound_heater_is_suspected(string body, int trials)
    {
        var design = Design(body);
        for (var seed = 100; seed < 100 + trials; seed++)
        {
            var random = new Random(seed);
            var text = SimulatedLog.WarmUpText(SimulatedLog.Draw(design, random), design.TargetCelsius, random, 120, 120 + (2.5 * WarmUp.SlowestSeconds(design)));
            var (dictionary, readings) = Take(design, text);
            foreach (var reading in readings)
                Assert.True(dictionary.Checks[dictionary.IndexOfCheck(reading.CheckId)!.Value].Judge(reading.Value) == Verdict.Pass, $"seed {seed}: {reading}");
            Assert.True(readings.Count >= 5, $"seed {seed}: {string.Join(", ", readings)}");
        }
    }

    [Fact]
    public void Exchanged_sensors_are_named_first()
    {
        var design = SimulatedLog.Nozzle;
        var random = new Random(1);
        var (dictionary, readings) = Take(design, SimulatedLog.WarmUpText(SimulatedLog.Draw(design, random), 220, random, 60, 300, isExchanged: true));
        Assert.Equal("sensors-exchanged", dictionary.Faults[Diagnosis.Explain(dictionary, readings)[0].Faults[0]].Id);
    }

    // The guard, or the person, stopped it long before anything was reached: the rise until then is enough.
    [Fact]
    public void A_heater_of_a_quarter_power_is_told_from_the_first_minutes()
    {
        var design = SimulatedLog.Plate;
        var heater = design.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]) with { Watts = 125 };
        var (dictionary, readings) = Take(design, SimulatedLog.WarmUpText(heater, 100, new Random(2), 30, 150));
        Assert.Contains(Diagnosis.Explain(dictionary, readings), hypothesis => hypothesis.Faults.Select(fault => dictionary.Faults[fault].Id).SequenceEqual(["power-quarter"]));
        Assert.DoesNotContain(readings, reading => reading.CheckId == "time-to-end");
    }

    [Fact]
    public void A_log_that_leaves_the_band_says_in_which_line()
    {
        var design = SimulatedLog.Plate;
        var heater = design.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]) with { Watts = 1000 };
        var trace = SimulatedLog.Trace(SimulatedLog.WarmUpText(heater, 100, new Random(3), 30, 300));
        var warmUp = WarmUpStretch.Of(trace)!;
        var leaving = BandLeaving.Of(LoggedHeater.Of(design, trace, warmUp, null), trace, warmUp)!;
        Assert.True(leaving.Celsius > leaving.Limit);
        Assert.InRange(leaving.Line, 34, 60);
        Assert.Equal(30, warmUp.OnSeconds);
    }

    [Fact]
    public void A_gap_over_the_moment_of_a_reading_leaves_it_out()
    {
        var design = SimulatedLog.Nozzle;
        var text = SimulatedLog.WarmUpText(design.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]), 220, new Random(4), 60, 600);
        var early = new WarmUpReadings(design).EarlySeconds;
        var cut = string.Join('\n', text.Split('\n').Where(line => !double.TryParse(line.Split(',')[0], out var time) || Math.Abs(time - 60 - early) > 8));
        var trace = SimulatedLog.Trace(cut);
        var warmUp = WarmUpStretch.Of(trace)!;
        var readings = LogReadings.Of(design, trace, warmUp, HoldStretch.Of(trace));
        Assert.Equal(LogReadingLack.Gap, readings.Lacking["early-rise"]);
        Assert.Single(trace.Run.Gaps);
    }

    [Fact]
    public void A_log_that_begins_warm_is_not_held_against_a_cold_start()
    {
        var design = SimulatedLog.Nozzle;
        var heater = design.At([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
        var text = SimulatedLog.WarmUpText(heater, 220, new Random(5), 60, 600, heatsWhenOff: true);
        var trace = SimulatedLog.Trace(text);
        var readings = LogReadings.Of(design, trace, WarmUpStretch.Of(trace)!, null);
        Assert.Equal(LogReadingLack.NotCold, readings.Lacking["early-rise"]);
        Assert.True(readings.Readings.Single(reading => reading.CheckId == "rise-while-off").Value > 20);
    }

    private static HeaterDesign Design(string body) => body == "plate" ? SimulatedLog.Plate : SimulatedLog.Nozzle;

    private static (FaultDictionary Dictionary, IReadOnlyList<Reading> Readings) Take(HeaterDesign design, string text)
    {
        var trace = SimulatedLog.Trace(text);
        var (warmUp, hold) = (WarmUpStretch.Of(trace)!, HoldStretch.Of(trace));
        var logged = LoggedHeater.Of(design, trace, warmUp, hold);
        return (LogCampaign.Of(logged, warmUp.FullSeconds), LogReadings.Of(logged, trace, warmUp, hold).Readings);
    }
}
