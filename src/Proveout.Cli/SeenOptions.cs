using System.CommandLine;

namespace Proveout.Cli;

/// <summary>Options by which a person says what is seen, and what hand checks read.</summary>
internal sealed class SeenOptions
{
    private readonly Option<string[]?> _sees = new("--sees") { Description = "What you see, in the words that the command lists, or in as many of them as say it; may be given several times.", HelpName = "WORDS" };
    private readonly Option<string[]?> _reads = new("--reads") { Description = "What a hand check reads, such as \"stops=0.4\"; may be given several times.", HelpName = "CHECK=VALUE" };

    /// <summary>Gives a command the options.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(_sees);
        command.Options.Add(_reads);
    }

    /// <summary>What was said to be seen.</summary>
    public string[] Sees(ParseResult parse) => parse.GetValue(_sees) ?? [];

    /// <summary>What was said to be read.</summary>
    public string[] Reads(ParseResult parse) => parse.GetValue(_reads) ?? [];
}
