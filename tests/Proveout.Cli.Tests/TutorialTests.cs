namespace Proveout.Cli.Tests;

/// <summary>docs/tutorial.md, run line by line.</summary>
public sealed class TutorialTests : IDisposable
{
    private readonly Tutorial _tutorial = new(Path.Combine("docs", "tutorial.md"));

    [Fact]
    public async Task Every_line_of_the_tutorial_runs_as_it_stands_and_finds_the_mistake_that_was_made()
    {
        Assert.True(_tutorial.Lines.Count >= 13, "The tutorial has lost its lines.");
        foreach (var line in _tutorial.Lines)
        {
            var run = await _tutorial.RunAsync(line);
            Assert.True(run.Exit is 0 or 1, $"{line} ended with {run.Exit}: {run.Error}");
            if (line.StartsWith("diagnose", StringComparison.Ordinal))
                Assert.Contains("W43 (black) lands on A1.STOP1-V instead of A1.STOP1-0V", run.Output, StringComparison.Ordinal);
        }

        Assert.NotEmpty(Directory.EnumerateFiles(_tutorial.At("report"), "*.pdf"));
    }

    public void Dispose() => _tutorial.Dispose();
}
