using System.Globalization;
using System.Text;
using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Workshop.Tests;

/// <summary>Logs of a nozzle of 60 W, 28 J/K and 0.09 W/K, under a controller that throttles, as a person would log them.</summary>
public sealed class HeatLogTests
{
    private static readonly HeatedBody Nozzle = new("nozzle", Power.FromWatts(60), Temperature.FromDegreesCelsius(220), "ntc-100k-3950", ElectricResistance.FromKiloohms(4.7))
    {
        PowerTolerance = Ratio.FromPercent(12),
        Uptake = new HeatUptake(28),
        Loss = new HeatPassage(0.09),
        Lag = Duration.FromSeconds(5),
    };

    [Fact]
    public void A_sound_log_is_sound_and_says_what_it_cannot_exclude()
    {
        var view = Judge(Log());
        Assert.True(view.Sheet.IsFine, string.Join(" ", view.Sheet.Findings));
        Assert.Contains("warms up as a sound one does", view.Sheet.Findings[0], StringComparison.Ordinal);
        Assert.Contains("The sensor sits loosely.", view.Sheet.Findings[1], StringComparison.Ordinal);
        Assert.Empty(view.Diagnosis!.Failed);
        Assert.Equal(3, view.Plots.Count);
        Assert.Contains("told to stay off for 2.2 min at 22.0 °C, from line 132 on at full output", view.What[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Settings_and_guard_follow_from_a_sound_log()
    {
        var view = Judge(Log());
        var best = view.Settings[0];
        Assert.Equal(("SIMC, PID", true), (best.Rule, best.IsRobust));
        Assert.Equal([1.0, 100, 255], best.Parallel.Select(form => form.FullOutput));
        Assert.Equal(100 * best.Parallel[0].Proportional, best.Parallel[1].Proportional, 1e-9);
        Assert.InRange(best.WorstSensitivity, 1, 1.8);
        Assert.InRange(best.OvershootKelvin!.Value, 0, 5);
        Assert.InRange(view.Guard!.LeastRiseKelvin, 0.3, 20);
        Assert.InRange(view.Guard.MissedPercent, 0, 3);
    }

    [Theory]
    [InlineData("The heater gives half its power", 30, 0.09, 5, false, false)]
    [InlineData("The heater gives four times its power", 240, 0.09, 5, false, false)]
    [InlineData("The heater's circuit is open.", 0, 0.09, 5, false, false)]
    [InlineData("This sensor's plug and that of another heater are exchanged.", 60, 0.09, 5, true, false)]
    [InlineData("The heater's switch conducts for good.", 60, 0.09, 5, false, true)]
    [InlineData("A fan blows on what is heated.", 60, 0.24, 5, false, false)]
    public void A_mistake_is_named_from_its_log(string sentence, double watts, double loss, double lag, bool isExchanged, bool isStuckOn)
    {
        var view = Judge(Log(watts, loss, lag, isExchanged, isStuckOn));
        Assert.False(view.Sheet.IsFine);
        Assert.StartsWith(sentence, view.Diagnosis!.Suspects[0].Sentence, StringComparison.Ordinal);
        Assert.NotEmpty(view.Sheet.Steps);
    }

    [Fact]
    public void A_log_without_a_machine_file_still_gives_process_and_settings()
    {
        var view = HeatLogJudgement.Of(Request(Log()), []).Value!;
        Assert.Null(view.Diagnosis);
        Assert.NotEmpty(view.Settings);
        Assert.Contains(view.Sheet.Remarks, remark => remark.StartsWith("Without a machine file", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(60, true, false, "and `plate temperature` has: the plugs of the two sensors are exchanged")]
    [InlineData(0, false, false, "nothing has warmed up")]
    [InlineData(60, false, true, "while the heater is told to stay off")]
    public void What_no_sound_heater_does_is_told_without_a_machine_file(double watts, bool isExchanged, bool isStuckOn, string words)
    {
        var sheet = HeatLogJudgement.Of(Request(Log(watts, isExchanged: isExchanged, isStuckOn: isStuckOn)), []).Value!.Sheet;
        Assert.False(sheet.IsFine);
        Assert.Contains(sheet.Findings, finding => finding.Contains(words, StringComparison.Ordinal));
        Assert.NotEmpty(sheet.Steps);
    }

    [Fact]
    public void A_loss_that_grew_by_a_fifth_is_told_beyond_noise()
    {
        var request = Request(Log(loss: 0.108)) with { Before = LogSource.Of(new NamedText("before.csv", Log(seed: 2))) };
        var view = HeatLogJudgement.Of(request, [Nozzle]).Value!;
        var hold = view.Compared.Single(figure => figure.Name.StartsWith("Output that holds", StringComparison.Ordinal));
        Assert.True(hold.IsBeyondNoise);
        Assert.Equal(0.2, hold.Difference.Value / hold.Before.Value, 0.02);
        Assert.Contains(view.Sheet.Findings, finding => finding.Contains("is beyond noise", StringComparison.Ordinal));
    }

    [Fact]
    public void A_log_that_begins_hot_cannot_be_judged_and_says_why()
    {
        var view = Judge("time [s],nozzle temperature [degC],output [%]\n0,71,0\n1,71.2,0\n2,71.1,100\n3,72,100\n4,73,100\n");
        Assert.Null(view.Diagnosis);
        Assert.Contains("cannot be told: it begins at 71.1 °C, which is no room's temperature", view.Sheet.Findings[0], StringComparison.Ordinal);
        Assert.False(view.Sheet.IsFine);
    }

    // A 4.7 kΩ pull-up with 2.2 kΩ set shows 43 °C in a room of 25 °C (thermistor of 100 kΩ, 3950 K): by hand, 100 kΩ over 4.7 kΩ is read as 46.8 kΩ.
    [Fact]
    public void A_sensor_that_is_set_wrongly_is_told_by_what_the_other_shows_in_the_room()
    {
        var view = Judge("time [s],nozzle temperature [degC],plate temperature [degC],nozzle output [%]\n" + string.Concat(Enumerable.Range(0, 40).Select(second => $"{second},43.1,25.0,{(second < 30 ? 0 : 100)}\n")));
        Assert.False(view.Sheet.IsFine);
        Assert.Contains("where `plate temperature` begins at 25 °C", view.Sheet.Findings[0], StringComparison.Ordinal);
        Assert.Contains(view.Diagnosis!.Suspects, suspect => suspect.Sentence.Contains("reckons with a pull-up of 2.2 kΩ", StringComparison.Ordinal));
    }

    // More than a day in steps of a quarter second: the warm-up is read once more, and the verdict is that of the short log.
    [Fact]
    public void A_long_log_is_judged_by_its_warm_up_all_the_same()
    {
        var rows = Log().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var text = new StringBuilder(rows[0]).Append('\n');
        foreach (var (row, cells) in rows.Skip(1).Select((line, row) => (row, line[line.IndexOf(',', StringComparison.Ordinal)..])))
            for (var part = 0; part < 4; part++)
                text.Append(CultureInfo.InvariantCulture, $"{row + (0.25 * part):0.00}{cells}\n");
        for (var row = 5600; row < 400_000; row++)
            text.Append(CultureInfo.InvariantCulture, $"{0.25 * row:0.00},{220 + (0.1 * (row % 3)) - 0.1:0.00},22.00,29.7,220\n");
        var view = Judge(text.ToString());
        Assert.True(view.Sheet.IsFine, string.Join(" ", view.Sheet.Findings));
        Assert.Contains("from line 522 on at full output for 10", view.What[1], StringComparison.Ordinal);
        Assert.Equal(5, view.Diagnosis!.Readings);
    }

    [Fact]
    public void A_stuck_reading_and_a_poor_joint_are_told_with_their_lines()
    {
        var lines = Log().Split('\n');
        for (var row = 200; row < lines.Length - 1; row++)
            lines[row] = string.Join(',', lines[row].Split(',').Select((cell, index) => index == 1 ? "131.20" : index == 3 ? "100" : cell));
        lines[150] = "149,-20.0,22.0,100,220";
        var findings = Judge(string.Join('\n', lines)).Sheet.Findings;
        Assert.Contains(findings, finding => finding.StartsWith("Line 151:", StringComparison.Ordinal) && finding.Contains("open or short", StringComparison.Ordinal));
        Assert.Contains(findings, finding => finding.Contains("the reading is stuck", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no-such-body", "", "body", "kiln")]
    [InlineData("no-such-run", "", "run", "3")]
    [InlineData("nothing-left", "", "from", "500", "to", "100")]
    [InlineData("out-of-range", "", "target", "2000")]
    [InlineData("no-such-column", "", "sensor", "kiln")]
    [InlineData("which-sensor", "time [s],left temperature [degC],right temperature [degC],output [%]\n0,20,20,0\n1,20,20,0\n")]
    [InlineData("no-reading", "time [s],temperature [degC],output [%]\n0,-20,0\n1,-20,0\n2,-20,100\n")]
    public void What_is_wrong_is_said(string rule, string log, params string[] typed)
    {
        var words = typed.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1]);
        var request = new HeatLogRequest(
            LogSource.Of(new NamedText("log.csv", log.Length > 0 ? log : Log())), null, words.GetValueOrDefault("body", ""), words.GetValueOrDefault("sensor", ""), "", words);
        Assert.Contains(HeatLogJudgement.Of(request, [Nozzle]).Diagnostics, diagnostic => diagnostic.Rule == rule && diagnostic.Mend.Length > 0);
    }

    private static HeatLogView Judge(string log)
    {
        var answer = HeatLogJudgement.Of(Request(log), [Nozzle]);
        Assert.Empty(answer.Diagnostics);
        return answer.Value!;
    }

    private static HeatLogRequest Request(string log) => new(LogSource.Of(new NamedText("log.csv", log)), null, "", "", "", new Dictionary<string, string>());

    // Body and sensor in steps of a tenth of a second; a controller of 0.05 for each K and 60 s, whose integral is held at the ends.
    internal static string Log(double watts = 60, double loss = 0.09, double lag = 5, bool isExchanged = false, bool isStuckOn = false, int seed = 1)
    {
        const double Room = 22;
        const int OffSeconds = 130;
        var random = new Random(seed);
        double Noise() => 0.1 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var text = new StringBuilder("time [s],nozzle temperature [degC],plate temperature [degC],nozzle output [%],nozzle target [degC]\n");
        var (body, sensor, output, integral) = (Room, Room, 0.0, 0.0);
        for (var second = 0; second < 1400; second++)
        {
            var (own, other) = (sensor + Noise(), Room + Noise());
            var (shown, beside) = isExchanged ? (other, own) : (own, other);
            var asked = (0.05 * (220 - shown)) + integral;
            output = second < OffSeconds ? 0 : Math.Clamp(asked, 0, 1);
            if (second >= OffSeconds && output == asked)
                integral += 0.05 * (220 - shown) / 60;
            text.Append(CultureInfo.InvariantCulture, $"{second},{shown:0.00},{beside:0.00},{100 * output:0.0},{(second < OffSeconds ? 0 : 220)}\n");
            for (var part = 0; part < 10; part++)
            {
                body += 0.1 * ((watts * (isStuckOn ? 1 : output)) - (loss * (body - Room))) / 28;
                sensor += 0.1 * (body - sensor) / lag;
            }

            if (body > 600)
                break;
        }

        return text.ToString();
    }
}
