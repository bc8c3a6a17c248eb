using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Proveout.Cli.Tests;

public sealed class ResonanceTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task A_recording_is_told_in_words_and_as_JSON()
    {
        var path = folder.At("x.csv");
        await File.WriteAllTextAsync(path, Table(47, 0.06), TestContext.Current.CancellationToken);

        var words = await Run.OfAsync("resonance", path, "--excited-by", "blows");
        var json = await Run.OfAsync("resonance", path, "--excited-by", "blows", "--json");

        Assert.Equal((0, ""), (words.Exit, words.Error));
        Assert.Contains("Axis x: use ", words.Output, StringComparison.Ordinal);
        Assert.Contains("use this", words.Output, StringComparison.Ordinal);
        using var document = JsonDocument.Parse(json.Output);
        Assert.Equal("proveout-resonance 1", document.RootElement.GetProperty("format").GetString());
        var axis = document.RootElement.GetProperty("axes")[0];
        Assert.Equal(47, axis.GetProperty("resonances")[0].GetProperty("frequencyHertz").GetProperty("value").GetDouble(), 0.3);
        Assert.Equal(6, axis.GetProperty("shapers").GetArrayLength());
    }

    [Fact]
    public async Task A_file_that_is_missing_or_no_table_is_refused_with_its_name()
    {
        var path = folder.At("letter.csv");
        await File.WriteAllTextAsync(path, "Dear reader,\nno numbers here.\n", TestContext.Current.CancellationToken);

        var missing = await Run.OfAsync("resonance", folder.At("nowhere.csv"));
        var wrong = await Run.OfAsync("resonance", path);

        Assert.Equal((2, 2), (missing.Exit, wrong.Exit));
        Assert.Contains("nowhere.csv: The file cannot be read.", missing.Error, StringComparison.Ordinal);
        Assert.Contains("There is no column `time`", wrong.Error, StringComparison.Ordinal);
    }

    private static string Table(double hertz, double damping)
    {
        var random = new Random(1);
        var turn = 2 * Math.PI * hertz;
        var text = new StringBuilder("time [ms];x [g]\n");
        for (var row = 0; row < 12_000; row++)
        {
            var sample = 0.002 * (random.NextDouble() - 0.5);
            foreach (var blow in new[] { 1.0, 3.5, 6, 8.5 })
                if (row / 1000.0 - blow is >= 0 and var time)
                    sample += 0.5 * Math.Exp(-damping * turn * time) * Math.Sin(turn * time);
            text.Append(CultureInfo.InvariantCulture, $"{row};{sample:0.00000}\n");
        }

        return text.ToString();
    }
}
