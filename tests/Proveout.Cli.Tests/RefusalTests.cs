using System.Text.Json;

namespace Proveout.Cli.Tests;

public sealed class RefusalTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    private const string TwoMistakes = """
        format: proveout-machine 1
        machine: {name: Lamp}
        parts:
          X1: {type: no-such-type}
          X2: {typ: dc-inlet}
        """;

    [Theory]
    [InlineData("review")]
    [InlineData("plan")]
    [InlineData("readings")]
    [InlineData("serve")]
    [InlineData("rehearse")]
    [InlineData("bench")]
    public async Task Everything_wrong_with_a_machine_file_is_said_at_once(string command)
    {
        var run = await Run.OfAsync(command, folder.Write("lamp.yaml", TwoMistakes));

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("lamp.yaml:4:", run.Error, StringComparison.Ordinal);
        Assert.Contains("lamp.yaml:5:", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_refusal_is_data_where_data_was_asked_for()
    {
        var run = await Run.OfAsync("plan", folder.Write("lamp.yaml", TwoMistakes), "--json");

        using var refusal = JsonDocument.Parse(run.Output);
        Assert.Equal((2, ""), (run.Exit, run.Error));
        Assert.Equal("proveout-refusal 1", refusal.RootElement.GetProperty("format").GetString());
        Assert.True(refusal.RootElement.GetProperty("diagnostics").GetArrayLength() >= 2);
    }

    [Theory]
    [InlineData("plan", "nowhere.yaml")]
    [InlineData("plan", "pennywort", "--catalogue", "nowhere")]
    [InlineData("builds", "--journal", "nowhere.db")]
    [InlineData("report", "P-7", "--journal", "nowhere.db")]
    [InlineData("readings", "pennywort", "A1.V+", "A1.NOPE")]
    [InlineData("readings", "pennywort", "A1.V+", "A1.V-", "--set-up", "upside-down")]
    [InlineData("rehearse", "pennywort", "--mistake", "nonsense")]
    [InlineData("diagnose", "pennywort", "--readings", "nowhere.txt")]
    public async Task What_is_not_there_is_refused_in_a_sentence(params string[] words)
    {
        var run = await Run.OfAsync(words);

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.EndsWith(".", run.Error.TrimEnd(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_no_journal_is_refused_and_left_as_it_is()
    {
        var path = folder.Write("notes.db", "Not a journal, but somebody's notes: keep.");

        var run = await Run.OfAsync("builds", "--journal", path);

        Assert.Equal(2, run.Exit);
        Assert.Contains("notes.db", run.Error, StringComparison.Ordinal);
        Assert.Equal("Not a journal, but somebody's notes: keep.", await File.ReadAllTextAsync(path));
    }

    [Fact]
    public async Task A_mistake_of_the_program_is_a_sentence_and_its_details_go_to_a_file()
    {
        using var error = new StringWriter();

        var exit = await CommandRun.OfAsync(["schema"], new Terminal(new BrokenWriter(), error, TextReader.Null, isPlain: true, isTyped: false));

        var log = error.ToString().Split(["The details are in ", ": please"], StringSplitOptions.None)[1];
        Assert.Equal(3, exit);
        Assert.DoesNotContain("   at ", error.ToString(), StringComparison.Ordinal);
        Assert.Contains(nameof(BrokenWriter), await File.ReadAllTextAsync(log), StringComparison.Ordinal);
        File.Delete(log);
    }

    private sealed class BrokenWriter : StringWriter
    {
        public override void Write(string? value) => throw new InvalidOperationException("Broken on purpose.");
    }
}
