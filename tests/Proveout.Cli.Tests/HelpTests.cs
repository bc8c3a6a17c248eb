namespace Proveout.Cli.Tests;

public sealed class HelpTests
{
    public static TheoryData<string> Commands =>
        [.. CommandTree.Build(new Terminal(TextWriter.Null, TextWriter.Null, TextReader.Null, isPlain: true, isTyped: false)).Subcommands.Select(command => command.Name)];

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Help_of_every_command_shows_an_example_of_it(string command)
    {
        var run = await Run.OfAsync(command, "--help");

        Assert.Equal((0, ""), (run.Exit, run.Error));
        Assert.Contains($"Example:\n  proveout {command}", run.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Help_of_the_program_lists_every_command()
    {
        var run = await Run.OfAsync("--help");

        Assert.All(Commands.Select(row => row.Data), command => Assert.Contains($"\n  {command} ", run.Output.ReplaceLineEndings("\n") + " ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("plann")]
    [InlineData("plan")]
    [InlineData("serve", "--port", "seventy")]
    [InlineData("serve", "--port", "70000")]
    [InlineData("serve", "--meter", "192.168.1.40")]
    [InlineData("serve", "--meter", "http://192.168.1.40:5025/")]
    [InlineData("readings", "pennywort", "A1.V+")]
    [InlineData("verify")]
    [InlineData("verify", "P-7", "--all")]
    public async Task Words_that_make_no_sense_are_refused_with_the_way_to_help(params string[] words)
    {
        var run = await Run.OfAsync(words);

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("--help`", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_schema_is_JSON()
    {
        var run = await Run.OfAsync("schema");

        using var schema = System.Text.Json.JsonDocument.Parse(run.Output);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
    }
}
