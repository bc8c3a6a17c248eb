using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>Reads a quantity from text; false with a fault when the text is not one.</summary>
/// <typeparam name="T">The quantity.</typeparam>
internal delegate bool QuantityParser<T>(string text, out T value, [NotNullWhen(false)] out QuantityFault? fault);

/// <summary>A quantity with its unit.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="name">What it is called.</param>
/// <param name="examples">Well-written examples.</param>
/// <param name="pattern">Regular expression for editors.</param>
/// <param name="parse">Reads it.</param>
/// <param name="format">Text that reads as exactly a value.</param>
internal sealed class QuantityShape<T>(
    string name,
    string[] examples,
    Func<string> pattern,
    QuantityParser<T> parse,
    Func<T, string> format) : Shape<T>
    where T : struct
{
    public override bool TryRead(Node node, Problems problems, out T value)
    {
        value = default;
        if (node is not ScalarNode { IsNothing: false } scalar)
        {
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"A {name} should stand here, but it is {node.Kind}.",
                $"Write a number and a unit, such as {Quote.Of(examples[0])}.");
            return false;
        }

        if (parse(scalar.Text, out value, out var fault))
            return true;
        problems.Add(fault.Rule, node.Place, fault.Message, fault.Mend);
        return false;
    }

    public override Node Write(T value) => Scalar(format(value));

    public override JsonObject Describe(SchemaDefinitions definitions) => new()
    {
        ["type"] = "string",
        ["pattern"] = pattern(),
        ["examples"] = new JsonArray([.. examples.Select(example => JsonValue.Create(example))]),
    };
}
