using System.Globalization;
using System.Text.Json;

namespace Proveout.Cli.Tests;

public sealed class HeatLogTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    // First order, 100 K for full output, 100 s; half output from 60 s on.
    private static string Step() => "time [s];plate temperature [degC];output [0-255]\n" + string.Concat(Enumerable.Range(0, 700).Select(second =>
        string.Create(CultureInfo.InvariantCulture, $"{second};{22 + (second < 64 ? 0 : 50 * (1 - Math.Exp(-(second - 64) / 100.0))) + (0.02 * ((second * 7919 % 11) - 5)):0.00};{(second < 60 ? 0 : 127.5)}\n")));

    [Fact]
    public async Task A_step_gives_process_settings_and_guard()
    {
        var log = folder.At("step.csv");
        await File.WriteAllTextAsync(log, Step());

        var run = await Run.OfAsync("heat-log", log, "--target", "60");

        Assert.Equal(0, run.Exit);
        Assert.Contains("In line 62 the output goes from 0 % to 50 %", run.Output, StringComparison.Ordinal);
        Assert.Contains("Settings, SIMC, PI:", run.Output, StringComparison.Ordinal);
        Assert.Contains("Guard while it warms up:", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_data_are_those_that_the_documentation_names()
    {
        var log = folder.At("data.csv");
        await File.WriteAllTextAsync(log, Step());

        var run = await Run.OfAsync("heat-log", log, "--target", "60", "--json");

        using var data = JsonDocument.Parse(run.Output);
        Assert.Equal("proveout-heat-log 1", data.RootElement.GetProperty("format").GetString());
        Assert.Equal(100, data.RootElement.GetProperty("figures").EnumerateArray().Single(figure => figure.GetProperty("name").GetString() == "Time constant").GetProperty("figure").GetProperty("value").GetDouble(), 1.0);
        Assert.True(data.RootElement.GetProperty("settings")[0].GetProperty("isRobust").GetBoolean());
    }

    [Fact]
    public async Task A_file_that_is_missing_or_no_log_is_refused_with_its_place()
    {
        var log = folder.At("letter.csv");
        await File.WriteAllTextAsync(log, "time [s],plate temperature [degC],output [%]\n0,22,0\n1,warm,0\n");

        var missing = await Run.OfAsync("heat-log", folder.At("nowhere.csv"));
        var wrong = await Run.OfAsync("heat-log", log);

        Assert.Equal((2, 2), (missing.Exit, wrong.Exit));
        Assert.Contains("nowhere.csv: The file cannot be read.", missing.Error, StringComparison.Ordinal);
        Assert.Contains("letter.csv:3:1: `warm` under `plate temperature` is not a number.", wrong.Error, StringComparison.Ordinal);
    }
}
