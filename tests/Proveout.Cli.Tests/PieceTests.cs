using System.Text.Json;

namespace Proveout.Cli.Tests;

public sealed class PieceTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task A_piece_is_written_and_its_filled_form_is_judged()
    {
        var place = folder.At("piece");
        var written = await Run.OfAsync("piece", "--travel-x", "180", "--travel-y", "180", "--out", place, "--json");

        Assert.Equal((0, ""), (written.Exit, written.Error));
        using var piece = JsonDocument.Parse(written.Output);
        Assert.Equal("proveout-piece-files 1", piece.RootElement.GetProperty("format").GetString());
        Assert.All(piece.RootElement.GetProperty("files").EnumerateArray(), file => Assert.True(new FileInfo(file.GetString()!).Length > 500));

        var form = Path.Combine(place, "first-piece.csv");
        await File.WriteAllTextAsync(form, string.Join('\n', (await File.ReadAllLinesAsync(form)).Select(line => line.EndsWith(';') ? $"{line} {line.Split(';')[1].Trim()}" : line)));
        var judged = await Run.OfAsync("piece", "--travel-x", "180", "--travel-y", "180", "--readings", form, "--json");

        Assert.Equal((0, ""), (judged.Exit, judged.Error));
        using var answer = JsonDocument.Parse(judged.Output);
        Assert.Equal("proveout-piece 1", answer.RootElement.GetProperty("format").GetString());
        Assert.True(answer.RootElement.GetProperty("isFine").GetBoolean());
        Assert.Equal(31, answer.RootElement.GetProperty("lengths").GetArrayLength());
    }

    [Fact]
    public async Task A_feeder_that_takes_too_little_ends_with_findings()
    {
        var run = await Run.OfAsync("piece", "--mark-before", "120 120 120", "--mark-after", "25 25.5 25", "--feed-steps", "400");

        Assert.Equal(1, run.Exit);
        Assert.Contains("The feeder takes 5.17", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_of_another_size_are_refused_with_their_line()
    {
        var place = folder.At("other");
        await Run.OfAsync("piece", "--ring", "100", "--out", place);

        var run = await Run.OfAsync("piece", "--ring", "80", "--readings", Path.Combine(place, "first-piece.csv"));

        Assert.Equal(2, run.Exit);
        Assert.Contains("Measure 1 is drawn as 100 mm here, and as 80 mm in the piece that is judged.", run.Error, StringComparison.Ordinal);
    }
}
