using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>What a machine says of a kind of mistake: <c>off</c>, or how likely each of them is.</summary>
internal sealed class ChanceShape : Shape<MistakeSetting>
{
    public static readonly ChanceShape Instance = new();

    private const string Off = "off";

    private const string Pattern = @"^(off|0*[.,]\d+|\d+([.,]\d+)?[eE]-\d+)$";

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out MistakeSetting value)
    {
        value = null;
        if (node is not ScalarNode { IsNothing: false, Text: var text })
            problems.Add("wrong-type", node.NamePlace, $"{Quote.Of(node.Name)} should be `off` or a probability, but it is {node.Kind}.", Mend);
        else if (text == Off)
            value = new(node.Name, null);
        else if (DecimalText.LengthAtStart(text) != text.Length)
            problems.Add("not-a-number", node.Place, $"{Quote.Of(text)} is neither `off` nor a number.", Spelling.Nearest(text, [Off]) is null ? Mend : "Did you mean `off`?");
        else if (DecimalText.Parse(text, 0) is var chance && chance is not (> 0 and < 1))
            problems.Add("out-of-range", node.Place, $"{Quote.Of(text)} is no probability between 0 and 1.", Mend);
        else
            value = new(node.Name, chance);
        return value is not null;
    }

    public override Node Write(MistakeSetting value) => Scalar(value.Prior?.ToString("R", CultureInfo.InvariantCulture).ToLowerInvariant() ?? Off);

    public override JsonObject Describe(SchemaDefinitions definitions) => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["type"] = "string", ["pattern"] = Pattern },
            new JsonObject { ["type"] = "number", ["exclusiveMinimum"] = 0, ["exclusiveMaximum"] = 1 }),
        ["examples"] = new JsonArray(Off, "0.004"),
    };

    private static string Mend => "Write `off` to leave the kind out, or how likely each such mistake is, such as `0.004`.";
}
