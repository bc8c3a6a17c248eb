using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A coordinate that may ride on axes: <c>x + 20 mm</c>.</summary>
internal sealed class RidingShape : Shape<Riding>
{
    public static readonly RidingShape Instance = new();

    public override Riding Fallback => new(UnitsNet.Length.Zero, []);

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out Riding value)
    {
        value = node is ScalarNode { IsNothing: false, Text: var text } ? Riding.TryParse(text) : null;
        if (value is null)
            problems.Add(
                node is ScalarNode { IsNothing: false } ? "bad-place" : "wrong-type",
                node.Place,
                node is ScalarNode { IsNothing: false, Text: var wrong } ? $"{Quote.Of(wrong)} is no coordinate." : $"A coordinate should stand here, but it is {node.Kind}.",
                "Write a length, or an axis and a length, such as `20 mm`, `x + 20 mm` or `340 mm - y`.");
        return value is not null;
    }

    public override Node Write(Riding value) => Scalar(value.ToString());

    public override JsonObject Describe(SchemaDefinitions definitions) =>
        new() { ["type"] = "string", ["pattern"] = Riding.Pattern, ["examples"] = new JsonArray("20 mm", "x + 20 mm") };
}
