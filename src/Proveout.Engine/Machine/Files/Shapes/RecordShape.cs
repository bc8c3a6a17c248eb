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
    private readonly Dictionary<string, int> _positions = keys.Select((key, at) => (key.Name, at)).ToDictionary(StringComparer.Ordinal);

    public string Kind => kind;

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node is MappingNode mapping)
            value = make(new(node.Name, _positions, ReadValues(mapping, problems)));
        else
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"The {kind} {Called(node)}should have keys and values, but it is {node.Kind}.",
                KeysHint());
        return node is MappingNode;
    }

    private object?[] ReadValues(MappingNode mapping, Problems problems)
    {
        var values = new object?[keys.Count];
        var given = new bool[keys.Count];
        foreach (var entry in mapping.Entries)
        {
            if (!_positions.TryGetValue(entry.Name, out var at))
                problems.Add("unknown-key", entry.NamePlace, $"{Quote.Of(entry.Name)} is not a key of a {kind}.", () => MendOf(entry));
            else if (given[at])
                problems.Add("duplicate-key", entry.NamePlace, $"{Quote.Of(entry.Name)} stands twice in one {kind}.", "Keep one of them.");
            else
                (given[at], values[at]) = (true, keys[at].Read(entry, problems));
        }

        for (var at = 0; at < keys.Count; at++)
            if (!given[at])
                values[at] = Missing(keys[at], mapping, problems);
        return values;
    }

    // In braces, YAML takes the comma of `{length: 1,5 m}` for the end of the value, and `5 m` for a key.
    private string MendOf(Node unknown) => unknown is ScalarNode { IsNothing: true } && unknown.Name is [>= '0' and <= '9', ..]
        ? "Is it what follows a decimal comma? Write a decimal point, or put quotes around the whole value."
        : Spelling.Hint(unknown.Name, _positions.Keys);

    private object? Missing(Key<T> key, MappingNode mapping, Problems problems)
    {
        if (key.Required)
            problems.Add(
                "missing-key",
                mapping.NamePlace,
                $"The {kind} {Called(mapping)}has no {Quote.Of(key.Name)}.",
                $"Add {Quote.Of(key.Name)}.");
        return key.Fallback;
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
