using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A record: fixed keys, each with a shape of its own.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="kind">What it is called, such as <c>terminal</c>.</param>
/// <param name="keys">Its keys, in the order in which they are written.</param>
/// <param name="make">Makes the record of its values; called also when some are fallbacks, so that the rest is checked too.</param>
internal sealed class RecordShape<T>(string kind, IReadOnlyList<Key<T>> keys, Func<Fields, T> make) : Shape<T>
{
    private readonly Dictionary<string, Key<T>> _byName = keys.ToDictionary(key => key.Name, StringComparer.Ordinal);

    public string Kind => kind;

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node is MappingNode mapping)
            value = make(new(node.Name, ReadValues(mapping, problems)));
        else
            problems.Add("wrong-type", node.NamePlace, $"The {kind} {Called(node)}should have keys and values, but it is {node.Kind}.", KeysHint());
        return node is MappingNode;
    }

    private Dictionary<string, object?> ReadValues(MappingNode mapping, Problems problems)
    {
        var values = new Dictionary<string, object?>(keys.Count, StringComparer.Ordinal);
        foreach (var entry in mapping.Entries)
        {
            if (!_byName.TryGetValue(entry.Name, out var key))
                problems.Add("unknown-key", entry.NamePlace, $"{Quote.Of(entry.Name)} is not a key of a {kind}.", () => Spelling.Hint(entry.Name, keys.Select(known => known.Name)));
            else if (values.ContainsKey(entry.Name))
                problems.Add("duplicate-key", entry.NamePlace, $"{Quote.Of(entry.Name)} stands twice in the {kind} {Called(mapping)}.".Replace(" .", ".", StringComparison.Ordinal), "Keep one of them.");
            else
                values.Add(entry.Name, key.Read(entry, problems));
        }

        foreach (var key in keys.Where(key => !values.ContainsKey(key.Name)))
        {
            values.Add(key.Name, key.Fallback);
            if (key.Required)
                problems.Add("missing-key", mapping.NamePlace, $"The {kind} {Called(mapping)}has no {Quote.Of(key.Name)}.", $"Add {Quote.Of(key.Name)}.");
        }

        return values;
    }

    public override Node Write(T value) => new MappingNode(default, [.. keys.Select(key => key.Write(value)).OfType<Node>()]);

    public override JsonObject Describe(SchemaDefinitions definitions) => definitions.Refer(kind, () => DescribeKeys(definitions));

    private JsonObject DescribeKeys(SchemaDefinitions definitions) => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject(keys.Select(key => KeyValuePair.Create(key.Name, (JsonNode?)key.Describe(definitions)))),
        ["required"] = new JsonArray([.. keys.Where(key => key.Required).Select(key => JsonValue.Create(key.Name))]),
        ["additionalProperties"] = false,
    };

    private string KeysHint() => $"Its keys are {string.Join(", ", keys.Select(key => Quote.Of(key.Name)))}.";

    private static string Called(Node node) => node.Name.Length == 0 ? "" : Quote.Of(node.Name) + " ";
}
