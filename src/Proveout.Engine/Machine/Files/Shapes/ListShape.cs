using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A list.</summary>
/// <typeparam name="T">Its items.</typeparam>
/// <param name="item">The shape of an item.</param>
/// <param name="count">How many items there must be; null for any number.</param>
internal sealed class ListShape<T>(Shape<T> item, int? count = null) : Shape<ValueList<T>>
{
    public override ValueList<T> Fallback => [];

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out ValueList<T> value)
    {
        value = null;
        if (node is not ListNode list)
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"{Quote.Of(node.Name)} should be a list, but it is {node.Kind}.",
                "Write a list in square brackets, such as `[one, two]`.");
        else if (list.Items.Count != (count ?? list.Items.Count))
            problems.Add(
                "wrong-count",
                list.Place,
                $"{Quote.Of(node.Name)} lists {list.Items.Count}, but it should list {count}.",
                $"Write {count}.");
        else
            value = ReadItems(list, problems);
        return value is not null;
    }

    private ValueList<T>? ReadItems(ListNode list, Problems problems)
    {
        var items = new List<T>(list.Items.Count);
        foreach (var node in list.Items)
            if (item.TryRead(node, problems, out var value))
                items.Add(value);
        // Without all its items the places of the rest would be wrong.
        return items.Count == list.Items.Count ? items.ToValueList() : null;
    }

    public override Node Write(ValueList<T> value) => new ListNode(default, [.. value.Select(item.Write)]);

    public override JsonObject Describe(SchemaDefinitions definitions)
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Describe(definitions) };
        if (count is { } exactly)
            (schema["minItems"], schema["maxItems"]) = (exactly, exactly);
        return schema;
    }
}
