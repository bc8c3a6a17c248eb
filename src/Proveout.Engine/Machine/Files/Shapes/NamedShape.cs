using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>Things by name, in file order; a name stands once.</summary>
/// <typeparam name="T">The things.</typeparam>
/// <param name="rule">How their names are spelled.</param>
/// <param name="item">The shape of one; it finds its name on its node.</param>
/// <param name="nameOf">The name of one.</param>
internal sealed class NamedShape<T>(NameRule rule, Shape<T> item, Func<T, string> nameOf) : Shape<ValueList<T>>
{
    private readonly NameShape _name = new(rule);

    public override ValueList<T> Fallback => [];

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out ValueList<T> value)
    {
        value = null;
        if (node is MappingNode mapping)
            value = ReadEntries(mapping, problems);
        else
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"{Quote.Of(node.Name)} should give a value to each {rule.Kind} by name, but it is {node.Kind}.",
                "Write `name: value` lines under it, or `{}` when there is none.");
        return value is not null;
    }

    private ValueList<T> ReadEntries(MappingNode mapping, Problems problems)
    {
        var items = new List<T>(mapping.Entries.Count);
        var first = new Dictionary<string, SourcePlace>(StringComparer.Ordinal);
        foreach (var entry in mapping.Entries)
        {
            if (!_name.IsAllowed(entry.Key!, problems))
                continue;
            if (!first.TryAdd(entry.Name, entry.NamePlace))
                ReportDuplicate(entry, first[entry.Name], problems);
            else if (item.TryRead(entry, problems, out var value))
                items.Add(value);
        }

        return items.ToValueList();
    }

    /// <summary>The name of a thing.</summary>
    public string NameOf(T thing) => nameOf(thing);

    /// <summary>Says that a name was given before.</summary>
    public void ReportDuplicate(Node entry, SourcePlace first, Problems problems) =>
        problems.Add(
            "duplicate-name",
            entry.NamePlace,
            $"{Quote.Of(entry.Name)} is the name of another {rule.Kind} already, at {first}.",
            "Give each its own name, or take one of them out.");

    public override Node Write(ValueList<T> value) => new MappingNode(default, [.. value.Select(WriteEntry)]);

    private Node WriteEntry(T value)
    {
        var node = item.Write(value);
        node.Key = Scalar(nameOf(value));
        return node;
    }

    public override JsonObject Describe(SchemaDefinitions definitions) => new()
    {
        ["type"] = "object",
        ["propertyNames"] = new JsonObject { ["pattern"] = rule.Pattern },
        ["additionalProperties"] = item.Describe(definitions),
    };
}
