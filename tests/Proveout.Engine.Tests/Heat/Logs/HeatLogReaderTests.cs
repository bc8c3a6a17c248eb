using System.Globalization;
using System.Text;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

public sealed class HeatLogReaderTests
{
    // The same ten rows, as loggers write them.
    [Theory]
    [InlineData("time [s],plate temperature [degC],output [0-1]", ",", "s", 1, '.')]
    [InlineData("output [0-255];plate temp (°C);t [ms]", ";", "ms", 255, ',')]
    [InlineData("\uFEFFtime\tplate sensor\toutput %", "\t", "clock", 100, ',')]
    [InlineData("time,plate temperature [degF],output [0..100]", ",", "iso", 100, '.')]
    [InlineData("time s;plate temperature [K];plate output (0 to 1)", ";", "s", 1, ',')]
    public void Any_usual_form_gives_the_same_log(string heading, string separator, string clock, double full, char point)
    {
        var heads = heading.TrimStart('\uFEFF').Split(separator);
        var text = new StringBuilder(heading + "\r\n");
        for (var row = 0; row < 10; row++)
        {
            var celsius = 20 + (0.5 * row);
            string[] cells =
            [
                .. heads.Select(head => head[0] switch
                {
                    't' => clock switch { "s" => $"{row}", "ms" => $"{1000 * row}", "clock" => $"23:59:{55 + row:00}", _ => $"2026-11-28T10:00:{row:00}Z" },
                    'p' when head.Contains("temp", StringComparison.Ordinal) || head.Contains("sensor", StringComparison.Ordinal) => (head.Contains("degF", StringComparison.Ordinal) ? (celsius * 1.8) + 32 : head.Contains('K') ? celsius + 273.15 : celsius).ToString("0.00", CultureInfo.InvariantCulture).Replace('.', point),
                    _ => (row < 3 ? 0 : full).ToString(CultureInfo.InvariantCulture),
                }),
            ];
            // Past midnight the clock begins anew.
            text.Append(string.Join(separator, cells).Replace("23:59:60", "00:00:00", StringComparison.Ordinal).Replace("23:59:61", "00:00:01", StringComparison.Ordinal).Replace("23:59:62", "00:00:02", StringComparison.Ordinal).Replace("23:59:63", "00:00:03", StringComparison.Ordinal).Replace("23:59:64", "00:00:04", StringComparison.Ordinal)).Append("\r\n");
        }

        var log = SimulatedLog.Read(text.ToString());
        var run = Assert.Single(log.Runs);
        Assert.Equal(10, log.Rows);
        Assert.Equal([0.0, 1, 2, 3, 4, 5, 6, 7, 8, 9], run.Seconds.Select(value => Math.Round(value, 6)));
        Assert.Equal([20.0, 20.5, 21, 21.5, 22, 22.5, 23, 23.5, 24, 24.5], run.Sensors[0].Mean.Select(value => Math.Round(value, 6)));
        Assert.Equal([0.0, 0, 0, 1, 1, 1, 1, 1, 1, 1], run.Outputs[0].Mean);
        Assert.Equal(2, run.Lines[0]);
    }

    [Theory]
    [InlineData("", "empty-table", 0)]
    [InlineData("1,2,3\n4,5,6\n", "no-headings", 1)]
    [InlineData("temp [degC],output\n20,1\n", "no-time-column", 1)]
    [InlineData("time,x\n0,1\n", "no-temperature-column", 1)]
    [InlineData("time,temp [mm]\n0,20\n", "wrong-unit", 1)]
    [InlineData("time,temp\n", "no-rows", 0)]
    [InlineData("time,temp\n0,20\n1,warm\n", "not-a-number", 3)]
    [InlineData("time,temp\n0,20\nsoon,21\n", "no-time", 3)]
    [InlineData("time,temp\n0,20\n12:30,21\n", "no-time", 3)]
    [InlineData("time;temp\n0;20.5\n1;20,6\n", "point-and-comma", 3)]
    [InlineData("time,temp,output\n0,20\n1,21,1\n", "wrong-number-of-cells", 2)]
    [InlineData("time,temp\n0,294.1\n1,294.2\n2,294.1\n", "unit-of-temperature", 2)]
    [InlineData("time,temp\n0,71.6\n1,71.7\n2,71.6\n", "unit-of-temperature", 2)]
    [InlineData("time,temp [degC]\n0,294.1\n1,294.2\n2,294.1\n", "unit-of-temperature", 2)]
    [InlineData("time,temp\n0,20\n500,20\n1000,20\n1500,20\n", "unit-of-time", 2)]
    [InlineData("time,temp,output\n0,20,0\n1,20,40\n", "full-output", 0)]
    [InlineData("time,temp,power [W]\n0,20,0\n1,20,100\n", "full-output", 0)]
    [InlineData("time,temp,output [0-1]\n0,20,0\n1,20,40\n", "output-beyond-full", 0)]
    public void What_cannot_be_used_is_refused_with_its_line(string text, string rule, int line)
    {
        var refusal = SimulatedLog.Refusal(text);
        Assert.Equal((rule, line), (refusal.Rule, refusal.Place.Line));
        Assert.True(refusal.Message.Length > 0 && refusal.Mend.Length > 0);
    }

    [Fact]
    public void A_plate_that_began_warm_is_believed_when_its_heading_has_the_unit() =>
        Assert.Equal(71.6, SimulatedLog.Read("time,temp [degC]\n0,71.6\n1,71.7\n").Runs[0].Sensors[0].Mean[0]);

    [Fact]
    public void Watts_are_a_share_of_the_power_that_the_machine_file_has() =>
        Assert.Equal(0.5, SimulatedLog.Read("time,temp,power [W]\n0,20,0\n1,20,250\n", new LogHints(Watts: 500)).Runs[0].Outputs[0].Mean[1]);

    [Fact]
    public void The_largest_output_tells_its_scale_and_the_log_says_that_it_was_taken_so()
    {
        var log = SimulatedLog.Read("time,temp,output\n0,20,0\n1,20,255\n");
        Assert.Equal((255.0, true), (log.FullOutput, log.IsFullOutputTaken));
        Assert.Equal(1, log.Runs[0].Outputs[0].Mean[1]);
    }

    [Fact]
    public void A_restart_begins_another_run()
    {
        var text = "time,temp,output\n" + Rows(0, 50, 20) + Rows(0, 80, 30) + "time,temp,output\n" + Rows(0, 20, 40);
        var log = SimulatedLog.Read(text);
        Assert.Equal([LogRunStart.First, LogRunStart.TimeBack, LogRunStart.HeadingsAgain], log.Runs.Select(run => run.Start));
        Assert.Equal([2, 52, 133], log.Runs.Select(run => run.FirstLine));
        Assert.Equal(1, log.LongestRun);
    }

    [Fact]
    public void Rows_a_little_out_of_order_are_no_restart()
    {
        var run = Assert.Single(SimulatedLog.Read("t,time,temp [degC],output\n9,0,20,0\n9,1.2,20,0\n9,0.9,20,0\n9,2,\"20.5\",1\n").Runs);
        Assert.Equal((1L, 20.5), (run.RepeatedTimes, run.Sensors[0].Mean[^1]));
        Assert.Equal([0, 1.2, 1.2, 2], run.Seconds);
    }

    [Fact]
    public void A_temperature_that_jumps_back_to_its_start_begins_another_run()
    {
        var text = "time,temp,output\n" + string.Concat(Enumerable.Range(0, 200).Select(second => string.Create(CultureInfo.InvariantCulture, $"{second},{(second < 120 ? 20 + second : 20 + (0.5 * (second - 120)))},1\n")));
        var log = SimulatedLog.Read(text);
        Assert.Equal(LogRunStart.TemperatureBack, log.Runs[1].Start);
        Assert.InRange(log.Runs[1].FirstLine, 122, 126);
    }

    [Fact]
    public void Gaps_spikes_and_an_open_sensor_are_told_with_their_line()
    {
        var text = "time,temp,output\n" + string.Concat(Enumerable.Range(0, 300).Where(second => second is < 100 or > 130).Select(second =>
            string.Create(CultureInfo.InvariantCulture, $"{second},{(second switch { 50 => "95", 60 or 61 => "-20.3", 70 => "open", _ => $"{20 + (0.1 * second):0.00}" })},1\n")));
        var run = SimulatedLog.Read(text).Runs[0];
        var gap = Assert.Single(run.Gaps);
        Assert.Equal((102, 99.0, 131.0), (gap.Line, gap.FromSeconds, gap.ToSeconds));
        Assert.Equal(
            [(LogFlawKind.OpenOrShort, 62, 3L), (LogFlawKind.Spikes, 52, 1L)],
            run.Flaws.Select(flaw => (flaw.Kind, flaw.Line, flaw.Rows)));
        Assert.True(double.IsNaN(run.Sensors[0].Mean[50]));
    }

    [Fact]
    public void A_reading_that_stops_moving_is_told_with_its_line()
    {
        var text = "time,temp,output\n" + string.Concat(Enumerable.Range(0, 200).Select(second => string.Create(CultureInfo.InvariantCulture, $"{second},{20 + (0.5 * Math.Min(second, 80)):0.00},1\n")));
        var same = Assert.Single(SimulatedLog.Read(text).Runs[0].LongestSame);
        Assert.Equal((LogFlawKind.Stuck, 82, 60.0), (same.Kind, same.Line, same.Celsius));
        Assert.Equal(119, same.ForSeconds);
    }

    [Fact]
    public void A_last_row_that_breaks_off_is_left_out()
    {
        var log = SimulatedLog.Read("time,temp,output\n0,20,0\n1,20,1\n2,2");
        Assert.Equal((2, true), (log.Rows, log.IsCutShort));
    }

    // Bounded memory: what is kept of a million rows is what is kept of thirty thousand, and least and most are not lost.
    [Fact]
    public void A_long_log_is_thinned_without_losing_its_ends()
    {
        var log = HeatLogReader.Read(new MadeRows(1_000_000), "log.csv", LogHints.None).Value!;
        var run = Assert.Single(log.Runs);
        Assert.Equal(1_000_000, log.Rows);
        Assert.InRange(run.Seconds.Length, 1 << 14, 1 << 15);
        Assert.Equal(43.7, run.Sensors[0].Most.Max());
        Assert.Equal(1_000_001, run.LastLine);
        Assert.Equal(0.01, run.StepSeconds, 0.001);
    }

    private static string Rows(int from, int count, double celsius) =>
        string.Concat(Enumerable.Range(from, count).Select(second => string.Create(CultureInfo.InvariantCulture, $"{second},{celsius + (0.1 * second):0.0},1\n")));
}
