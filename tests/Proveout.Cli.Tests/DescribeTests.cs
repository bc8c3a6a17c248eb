using System.Text.Json;

namespace Proveout.Cli.Tests;

public sealed class DescribeTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task A_described_machine_is_written_and_reviews_without_errors_and_warnings()
    {
        var place = folder.At("hill-bench.yaml");
        var written = await Run.OfAsync("describe", "--name", "Hill bench", "--mains", "230", "--plate", "mains", "--hot-ends", "1", "--motors", "4", "--out", place);

        Assert.Equal((0, ""), (written.Exit, written.Error));
        Assert.Contains("resistance from mains voltage and power", written.Output, StringComparison.Ordinal);
        var review = await Run.OfAsync("review", place);
        Assert.Contains("0 errors, 0 warnings", review.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_there_already_is_left_as_it_is()
    {
        var place = folder.Write("corrected.yaml", "mine");

        var run = await Run.OfAsync("describe", "--name", "Hill bench", "--mains", "none", "--out", place);

        Assert.Equal((2, "mine"), (run.Exit, await File.ReadAllTextAsync(place)));
        Assert.Contains("left as it is", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_guessed_is_told_behind_the_caution()
    {
        var run = await Run.OfAsync("describe", "--name", "Hill bench", "--mains", "none", "--out", folder.At("cautious.yaml"));

        Assert.StartsWith("CAUTION: ", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answers_come_from_a_file_and_options_count_more()
    {
        var answers = folder.At("answers.txt");
        await File.WriteAllTextAsync(answers, "name: Hill bench\nmains: none\nboard: four\nmotors: 2\naxes: 2\n");

        var run = await Run.OfAsync("describe", "--answers", answers, "--motors", "3", "--json");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        using var started = JsonDocument.Parse(run.Output);
        Assert.Equal("proveout-started 1", started.RootElement.GetProperty("format").GetString());
        Assert.Contains("3 motors on 2 axes", started.RootElement.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.NotEqual(0, started.RootElement.GetProperty("guesses").GetArrayLength());
    }

    [Fact]
    public async Task Contradictions_are_refused_in_sentences()
    {
        var run = await Run.OfAsync("describe", "--name", "Hill bench", "--mains", "none", "--plate", "mains");

        Assert.Equal(2, run.Exit);
        Assert.Contains("A mains plate needs mains, and no mains enters this machine.", run.Error, StringComparison.Ordinal);
    }
}
