using System.Text.Json.Nodes;
using NJsonSchema;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>The schema against NJsonSchema, a general-purpose validator.</summary>
public sealed class MachineSchemaTests
{
    [Theory]
    [InlineData(Sample.CatalogueText)]
    [InlineData(Sample.MachineText)]
    public async Task It_accepts_what_the_reader_accepts(string text) => Assert.Empty(await Validate(text));

    [Theory]
    [InlineData("colour: brown", "colour: brwn")]
    [InlineData("colour: brown", "color: brown")]
    [InlineData("kind: duct", "kind: pipe")]
    [InlineData("name: Small oven", "nam: Small oven")]
    [InlineData("letter: E", "letter: e")]
    [InlineData("section: 1.0 mm2", "section: 1.0 mm")]
    [InlineData("length: 350 mm", "length: \"350\"")]
    [InlineData("105.8 ohm +-7 %", "105.8 ohm")]
    [InlineData("frequency: 50 Hz", "frequency: 50 HZ")]
    [InlineData("between: [A, B]", "between: [A]")]
    [InlineData("bridge: off", "bridge: of")]
    [InlineData("bridge: off", "brigde: off")]
    [InlineData("poor-joint: 0.004", "poor-joint: 4 %")]
    [InlineData("format: proveout-machine 1", "format: proveout-machine 2")]
    public async Task It_refuses_what_the_reader_refuses(string right, string wrong)
    {
        var text = Sample.MachineText.Replace(right, wrong, StringComparison.Ordinal);

        Assert.NotEmpty(Sample.Read(text).Diagnostics);
        Assert.NotEmpty(await Validate(text));
    }

    [Theory]
    [InlineData("105.8 ohm +-7 %", "4k7 ±5%")]
    [InlineData("105.8 ohm +-7 %", "1,5 kΩ .. 2 kΩ")]
    [InlineData("105.8 ohm +-7 %", "R47 .. 1 ohm .. open")]
    [InlineData("105.8 ohm +-7 %", "1 ohm +/- 2 %")]
    [InlineData("section: 1.0 mm2", "section: \"1,0mm²\"")]
    [InlineData("section: 1.0 mm2", "section: awg20")]
    [InlineData("length: 350 mm", "length: 3.5e+2 mm")]
    public async Task It_accepts_every_way_of_writing_that_the_reader_accepts(string right, string other)
    {
        var text = Sample.MachineText.Replace(right, right.StartsWith("105", StringComparison.Ordinal) ? $"\"{other}\"" : other, StringComparison.Ordinal);

        Assert.Empty(Sample.Read(text).Diagnostics);
        Assert.Empty(await Validate(text));
    }

    [Fact]
    public async Task It_accepts_what_the_writer_writes()
    {
        for (var seed = 0; seed < 50; seed++)
            Assert.Empty(await Validate(MachineWriter.Write(new RandomMachine(seed).Design())));
    }

    [Fact]
    public void Every_key_has_a_description_for_the_editor()
    {
        var definitions = JsonNode.Parse(MachineSchema.Write())!["$defs"]!.AsObject();

        Assert.All(
            definitions.SelectMany(definition => definition.Value!["properties"]?.AsObject().ToArray() ?? []),
            property => Assert.NotEmpty(property.Value!["description"]!.GetValue<string>()));
    }

    private static async Task<ICollection<NJsonSchema.Validation.ValidationError>> Validate(string yaml)
    {
        // The validator knows the place of definitions by its name before draft 2019-09.
        var schema = await JsonSchema.FromJsonAsync(MachineSchema.Write().Replace("$defs", "definitions", StringComparison.Ordinal));
        return schema.Validate(ToJson(NodeReader.Read(new("sample.yaml", yaml), new Problems())!)!.ToJsonString());
    }

    // The core schema of YAML 1.2 for what the samples use: truth values, and text.
    private static JsonNode? ToJson(Node node) => node switch
    {
        MappingNode mapping => new JsonObject(mapping.Entries.Select(entry => KeyValuePair.Create(entry.Name, ToJson(entry)))),
        ListNode list => new JsonArray([.. list.Items.Select(ToJson)]),
        ScalarNode { Plain: true, Text: "true" or "false" } flag => flag.Text == "true",
        _ => ((ScalarNode)node).Text,
    };
}
