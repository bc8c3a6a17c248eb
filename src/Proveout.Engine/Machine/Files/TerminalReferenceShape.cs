using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A terminal of the machine, written <c>A1.VIN+</c>.</summary>
internal sealed class TerminalReferenceShape : Shape<TerminalReference>
{
    public static readonly TerminalReferenceShape Instance = new();

    public override bool TryRead(Node node, Problems problems, out TerminalReference value)
    {
        value = default;
        if (node is ScalarNode { IsNothing: false } scalar && TerminalReference.TryParse(scalar.Text) is { } reference)
        {
            value = reference;
            return true;
        }

        problems.Add(
            node is ScalarNode { IsNothing: false } ? "bad-reference" : "wrong-type",
            node.Place,
            $"A terminal should stand here, but it is {node.Kind}.",
            "Write the part's designation, a full stop and the terminal's name, such as `A1.VIN+`.");
        return false;
    }

    public override Node Write(TerminalReference value) => Scalar(value.ToString());

    public override JsonObject Describe(SchemaDefinitions definitions) => new() { ["type"] = "string", ["pattern"] = @"^[^.]+\..+$" };
}
