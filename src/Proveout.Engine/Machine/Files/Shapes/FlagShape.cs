using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>True or false.</summary>
internal sealed class FlagShape : Shape<bool>
{
    public static readonly FlagShape Instance = new();

    public override bool TryRead(Node node, Problems problems, out bool value)
    {
        value = node is ScalarNode { Plain: true, Text: "true" };
        if (value || node is ScalarNode { Plain: true, Text: "false" })
            return true;
        problems.Add(
            "wrong-type",
            node.Place,
            $"{Quote.Of(node.Name)} should be `true` or `false`, but it is {node.Kind}.",
            "Write `true` or `false`, without quotes.");
        return false;
    }

    public override Node Write(bool value) => new ScalarNode(default, value ? "true" : "false", plain: true);

    public override JsonObject Describe(SchemaDefinitions definitions) => new() { ["type"] = "boolean" };
}
