using System.Text.Json;

namespace Proveout.Cli.Tests;

public sealed class JsonTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    public static TheoryData<string, string[]> Printing => new()
    {
        { "proveout-review 1", ["review", "pennywort", "--json"] },
        { "proveout-wire-list 1", ["wires", "export", "pennywort", "--json"] },
        { "proveout-wire-import 1", ["wires", "import", "pennywort", "WIRES", "--json"] },
        { "proveout-comparison 1", ["compare", "pennywort", "pennywort-as-wired", "--json"] },
        { "proveout-plan 1", ["plan", "pennywort", "--json", "--greedy"] },
        { "proveout-plan 1", ["plan", "pennywort", "--json", "--network", "--greedy"] },
        { "proveout-plan 1", ["plan", "pennywort", "--json", "--triples", "--greedy"] },
        { "proveout-answer 1", ["ask", "pennywort", "--json"] },
        { "proveout-belts 1", ["belts", "alderbrook", "--json"] },
        { "proveout-heat 1", ["heat", "pennywort", "--json"] },
        { "proveout-stages 1", ["stages", "alderbrook", "--json"] },
        { "proveout-settings 1", ["settings", "pennywort", "--json"] },
        { "proveout-acceptance 1", ["accept", "pennywort", "--json"] },
        { "proveout-air 1", ["air", "alderbrook", "--json"] },
        { "proveout-walk 1", ["walk", "pennywort", "--json"] },
        { "proveout-energising 1", ["energise", "pennywort", "--json"] },
        { "proveout-schedules 1", ["schedules", "pennywort", "--out", "PAPER", "--json"] },
        { "proveout-drawings 1", ["drawings", "pennywort", "--out", "PAPER", "--json"] },
        { "proveout-drawings 1", ["drawings", "pennywort", "--wire", "W51", "--out", "PAPER", "--json"] },
        { "proveout-check-table 1", ["readings", "pennywort", "--json"] },
        { "proveout-readings-between 1", ["readings", "pennywort", "A1.OUT0+", "A1.OUT0-", "--set-up", "mated", "--json"] },
        { "proveout-readings-by-plug-state 1", ["readings", "pennywort", "A1.OUT0+", "A1.OUT0-", "--shown", "14", "--json"] },
        { "proveout-rehearsal 1", ["rehearse", "pennywort", "--mistake", "conductor-missing:W43", "--json"] },
        { "proveout-diagnosis 1", ["diagnose", "pennywort", "--readings", "READINGS", "--json"] },
        { "proveout-build 1", ["import-readings", "pennywort", "--readings", "READINGS", "--builder", "Mara Lindt", "--journal", "JOURNAL", "--json"] },
        { "proveout-tension 1", ["tension", "--frequency", "112", "--other-frequency", "96", "--span", "150", "--mass", "8.1", "--target", "10", "--json"] },
        { "proveout-motor 1", ["motor", "--teeth", "20", "--current", "1.68", "--resistance", "1.65", "--inductance", "2.8", "--holding-torque", "0.44", "--mass", "0.5", "--acceleration", "5", "--speed", "300", "--belt-stiffness", "10000", "--loop", "1000", "--travel", "300", "--json"] },
        { "proveout-key 1", ["seal-key", "KEY", "--json"] },
        { "proveout-people 1", ["people", "list", "--journal", "JOURNAL", "--json"] },
        { "proveout-access-notes 1", ["people", "access-notes", "--journal", "JOURNAL", "--json"] },
        { "proveout-join 1", ["people", "join", "Tove Lund", "--role", "checker", "--at", "http://bench.local:8015/", "--journal", "JOURNAL", "--json"] },
        { "proveout-rescue 1", ["rescue", "READINGS", "--json"] },
        { "proveout-refusal 1", ["review", "nowhere", "--json"] },
    };

    private static string Document { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "json.md"));

    [Theory]
    [MemberData(nameof(Printing))]
    public async Task Every_format_and_every_key_is_described(string format, string[] words)
    {
        var run = await Run.OfAsync([.. words.Select(Filled)]);

        using var json = JsonDocument.Parse(run.Output, new JsonDocumentOptions { AllowDuplicateProperties = false });
        Assert.Equal(format, json.RootElement.GetProperty("format").GetString());
        Assert.Contains($"## `{format}`", Document.Replace("and `proveout-", "## `proveout-", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.All(KeysOf(json.RootElement).Distinct(), key => Assert.Contains($"`{key}`", Document, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Readings_either_way_round_are_told_with_the_reason()
    {
        var run = await Run.OfAsync("readings", "pennywort", "A1.OUT0+", "A1.OUT0-");

        Assert.Equal(0, run.Exit);
        Assert.Contains("CAUTION", run.Output, StringComparison.Ordinal);
        Assert.Contains("element of E1 (14.4 Ω)", run.Output, StringComparison.Ordinal);
    }

    private string Filled(string word) => word switch
    {
        "READINGS" => Path.Combine(Places.Samples, "pennywort-as-wired", "readings.txt"),
        "PAPER" => folder.At("paper"),
        "JOURNAL" => folder.At("journal.db"),
        "WIRES" => folder.Write("wires.csv", "Wire,Colour\r\nW21,pink\r\n"),
        "KEY" => folder.At("workshop.key"),
        _ => word,
    };

    private static IEnumerable<string> KeysOf(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => KeysOf(property.Value).Prepend(property.Name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(KeysOf),
        _ => [],
    };
}
