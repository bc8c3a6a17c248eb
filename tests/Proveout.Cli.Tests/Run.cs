namespace Proveout.Cli.Tests;

/// <summary>What a command line ended with and wrote.</summary>
public sealed record Run(int Exit, string Output, string Error)
{
    /// <summary>What the error stream holds besides progress, which depends on how busy the computer is.</summary>
    public string Complaints => string.Concat(Error.Split('\n').Where(line => !line.TrimEnd().EndsWith(" ...", StringComparison.Ordinal)));

    /// <summary>Runs a command line in this process, with what a person pipes in.</summary>
    public static async Task<Run> WithInputAsync(string input, params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var typed = new StringReader(input);
        var exit = await CommandRun.OfAsync(words, new Terminal(output, error, typed, isPlain: true, isTyped: false));
        return new Run(exit, output.ToString(), error.ToString());
    }

    public static Task<Run> OfAsync(params string[] words) => WithInputAsync("", words);
}
