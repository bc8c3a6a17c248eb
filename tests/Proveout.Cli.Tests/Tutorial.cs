using System.Text.RegularExpressions;

namespace Proveout.Cli.Tests;

/// <summary>The command lines of a document, run as they stand there.</summary>
/// <remarks>The reader stands in the clone and has a journal of their own; here both are a folder that goes.</remarks>
public sealed partial class Tutorial(string document) : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly HashSet<string> _written = new(StringComparer.Ordinal);

    /// <summary>The lines of its shell blocks, without the program's name.</summary>
    public IReadOnlyList<string> Lines { get; } =
    [
        .. from block in ShellBlock().Matches(File.ReadAllText(Path.Combine(Root, document)))
           from line in block.Groups[1].Value.Split('\n')
           where line.StartsWith("./proveout ", StringComparison.Ordinal)
           select line["./proveout ".Length..],
    ];

    private static string Root { get; } = RootOf();

    public string At(string name) => _folder.At(name);

    public Task<Run> RunAsync(string line) => Run.OfAsync([.. Words(line)]);

    public void Dispose() => _folder.Dispose();

    private IEnumerable<string> Words(string line)
    {
        string[] words = [.. Word().Matches(line).Select(match => match.Value.Trim('"'))];
        foreach (var (index, word) in words.Index())
        {
            if (index > 0 && words[index - 1] is "--out" or "--drawing")
                _written.Add(word);
            yield return word.StartsWith("samples/", StringComparison.Ordinal) || word.StartsWith("docs/", StringComparison.Ordinal) ? Path.Combine(Root, word)
                : _written.Contains(word) ? _folder.At(word)
                : word;
        }

        if (words[0] is "import-readings" or "report" or "verify" || words.Contains("--keep") || (words[0] == "diagnose" && !words.Contains("--readings")))
        {
            yield return "--journal";
            yield return _folder.At("journal.db");
        }
    }

    private static string RootOf()
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
