using System.Text.RegularExpressions;

namespace Proveout.Cli.Tests;

/// <summary>The tutorial of the README, run line by line.</summary>
public sealed partial class ReadmeTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task Every_line_of_the_tutorial_runs_as_it_stands()
    {
        var lines = Tutorial().ToArray();
        Assert.True(lines.Length >= 7, "The README has lost its tutorial.");
        foreach (var line in lines)
        {
            var run = await Run.OfAsync([.. Words(line)]);
            Assert.True(run.Exit is 0 or 1, $"{line} ended with {run.Exit}: {run.Error}");
            Assert.NotEmpty(run.Output);
        }

        Assert.NotEmpty(Directory.EnumerateFiles(_folder.At("report"), "*.pdf"));
    }

    [Fact]
    public async Task The_tutorial_finds_the_mistakes_that_the_builder_owns_up_to()
    {
        var run = await Run.OfAsync([.. Words(Tutorial().Single(line => line.StartsWith("diagnose", StringComparison.Ordinal)))]);
        var likeliest = run.Output.Split('\n').SkipWhile(line => !line.StartsWith("What explains", StringComparison.Ordinal)).Skip(1).First();
        Assert.Contains("W153", likeliest, StringComparison.Ordinal);
        Assert.Contains("W226", likeliest, StringComparison.Ordinal);
        Assert.Contains("A3 is wired the wrong way round", likeliest, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private static IEnumerable<string> Tutorial() =>
        from block in ShellBlock().Matches(File.ReadAllText(Path.Combine(Root(), "README.md")))
        from line in block.Groups[1].Value.Split('\n')
        where line.StartsWith("./proveout ", StringComparison.Ordinal)
        select line["./proveout ".Length..];

    // The reader stands in the clone with a journal of their own; the test keeps both in a folder that goes.
    private IEnumerable<string> Words(string line)
    {
        var words = Word().Matches(line).Select(match => match.Value.Trim('"')).ToArray();
        foreach (var (index, word) in words.Index())
            yield return word.StartsWith("samples/", StringComparison.Ordinal) ? Path.Combine(Root(), word)
                : index > 0 && words[index - 1] == "--out" ? _folder.At(word)
                : word;
        if (words[0] is "import-readings" or "report" or "verify")
        {
            yield return "--journal";
            yield return _folder.At("journal.db");
        }
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder.FullName;
    }

    [GeneratedRegex(@"```sh\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex ShellBlock();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();
}
