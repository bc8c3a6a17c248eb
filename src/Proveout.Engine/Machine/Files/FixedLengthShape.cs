using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A length that may be below zero: an end of travel, a height.</summary>
internal sealed class FixedLengthShape : Shape<Length>
{
    public static readonly FixedLengthShape Instance = new();

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out Length value)
    {
        value = default;
        if (node is ScalarNode { IsNothing: false, Text: var text } && Riding.TryParse(text) is { Shares.Count: 0 } read)
        {
            value = read.Fixed;
            return true;
        }

        problems.Add("bad-length", node.Place, $"{Quote.Of(node.Name)} should be a length, but it is {node.Kind}.", "Write a number and a unit, such as `300 mm` or `-5 mm`.");
        return false;
    }

    public override Node Write(Length value) => Scalar(new Riding(value, []).ToString());

    public override JsonObject Describe(SchemaDefinitions definitions) =>
        new() { ["type"] = "string", ["pattern"] = @"^\s*[+-]?\s*[0-9]+([.,][0-9]+)?\s*(mm|cm|m)\s*$", ["examples"] = new JsonArray("300 mm", "-5 mm") };
}
