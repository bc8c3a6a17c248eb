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

    [Theory]
    [InlineData("heat-log")]
    [InlineData("resonance")]
    [InlineData("level")]
    public async Task A_file_that_is_no_text_is_refused_without_letting_its_bytes_steer_the_screen(string command)
    {
        var file = folder.At("hostile.csv");
        await File.WriteAllTextAsync(file, "\u001B[2J\u001B]0;owned\u0007time;\u202Ex\n1;2\n");

        var run = await Run.OfAsync(command, file);

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.DoesNotContain(run.Error, letter => (char.IsControl(letter) && letter is not ('\n' or '\r')) || letter == '\u202E');
    }

    [Theory]
    [InlineData("heat", "`heated`")]
    [InlineData("air", "`bays`")]
    public async Task A_machine_that_says_nothing_of_a_matter_is_told_which_section_to_add(string command, string section)
    {
        var run = await Run.OfAsync(command, "quarrymoor");

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains(section, run.Error, StringComparison.Ordinal);
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
    [InlineData("r: {kind: resistor, between: [a, b], value: 0 ohm .. 1 ohm}", "above zero")]
    [InlineData("r: {kind: resistor, between: [a, b], value: -5 ohm +-5 %}", "above zero")]
    [InlineData("r: {kind: resistor, between: [a, b], value: 5 ohm .. 2 ohm}", "the lower limit first")]
    [InlineData("r: {kind: resistor, between: [a, a], value: 5 ohm +-5 %}", "two different nodes")]
    [InlineData("s: {kind: source, between: [a, b], voltage: 24 V}, t: {kind: source, between: [b, a], voltage: 24 V}", "a resistance between them")]
    [InlineData("d: {kind: diode, between: [a, b], forward: 0.7 V .. 0.4 V}", "the lower limit first")]
    public async Task A_circuit_that_contradicts_itself_is_refused_with_its_line_and_the_mend(string circuit, string mend)
    {
        var run = await Run.OfAsync("plan", folder.Write("odd.yaml", OddMachine.Text(circuit)));

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("odd.yaml:8:", run.Error, StringComparison.Ordinal);
        Assert.Contains(mend, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("walk")]
    [InlineData("energise")]
    [InlineData("ask")]
    public async Task Supplies_side_by_side_and_a_part_that_nothing_leads_to_get_an_answer(string command)
    {
        var machine = folder.Write("pair.yaml", OddMachine.Text("s: {kind: source, between: [a, b], voltage: 24 V, limit: 2 A}", isJoined: true));

        var run = await Run.OfAsync(command, machine);

        Assert.Equal((0, ""), (run.Exit, run.Complaints));
        Assert.NotEmpty(run.Output);
        Assert.DoesNotContain("NaN", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("review")]
    [InlineData("plan")]
    [InlineData("walk")]
    [InlineData("energise")]
    [InlineData("ask")]
    [InlineData("readings")]
    [InlineData("rehearse")]
    [InlineData("schedules")]
    [InlineData("bench")]
    [InlineData("serve")]
    [InlineData("diagnose", "--readings", "nowhere.txt")]
    [InlineData("import-readings", "--readings", "nowhere.txt", "--builder", "Mara Lindt")]
    public async Task A_machine_of_fifty_thousand_terminals_is_refused_in_a_sentence(string command, params string[] more)
    {
        var run = await Run.OfAsync([command, folder.Write("vast.yaml", OddMachine.OfTerminals(50_000)), .. more]);

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("vast.yaml: The machine has 50000 terminals; checks are computed for at most 20000.", run.Error, StringComparison.Ordinal);
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

    [Theory]
    [InlineData("diagnose")]
    [InlineData("import-readings", "--builder", "Mara Lindt")]
    public async Task A_file_without_readings_is_refused_in_a_sentence(string command, params string[] more)
    {
        var run = await Run.OfAsync([command, "pennywort", "--readings", folder.Write("notes.txt", "Somebody's notes: keep."), .. more]);

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("notes.txt: This is no file of readings", run.Error, StringComparison.Ordinal);
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
