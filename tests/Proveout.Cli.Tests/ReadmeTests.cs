namespace Proveout.Cli.Tests;

/// <summary>The first minutes of the README, run line by line.</summary>
public sealed class ReadmeTests : IDisposable
{
    private readonly Tutorial _tutorial = new("README.md");

    [Fact]
    public async Task Every_line_of_it_runs_as_it_stands_and_it_finds_the_mistakes_that_the_builder_owns_up_to()
    {
        Assert.True(_tutorial.Lines.Count >= 7, "The README has lost its tutorial.");
        foreach (var line in _tutorial.Lines)
        {
            var run = await _tutorial.RunAsync(line);
            Assert.True(run.Exit is 0 or 1, $"{line} ended with {run.Exit}: {run.Error}");
            Assert.NotEmpty(run.Output);
            if (line.StartsWith("diagnose", StringComparison.Ordinal))
                NamesTheMistakes(run);
        }

        Assert.NotEmpty(Directory.EnumerateFiles(_tutorial.At("report"), "*.pdf"));
    }

    public void Dispose() => _tutorial.Dispose();

    private static void NamesTheMistakes(Run run)
    {
        var likeliest = run.Output.Split('\n').SkipWhile(line => !line.StartsWith("What explains", StringComparison.Ordinal)).Skip(1).First();
        Assert.Contains("W153", likeliest, StringComparison.Ordinal);
        Assert.Contains("W226", likeliest, StringComparison.Ordinal);
        Assert.Contains("A3 is wired the wrong way round", likeliest, StringComparison.Ordinal);
    }
}
