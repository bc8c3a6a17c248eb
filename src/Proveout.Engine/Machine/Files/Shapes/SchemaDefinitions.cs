using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>The named parts of a JSON Schema, each described once.</summary>
internal sealed class SchemaDefinitions
{
    private readonly Dictionary<string, JsonObject?> _definitions = new(StringComparer.Ordinal);

    /// <summary>A reference to a definition, which is made when it is first referred to.</summary>
    public JsonObject Refer(string kind, Func<JsonObject> describe)
    {
        var name = kind.Replace(' ', '-');
        // Reserved before it is made, so that a description may refer to itself.
        if (_definitions.TryAdd(name, null))
            _definitions[name] = describe();
        return new() { ["$ref"] = $"#/$defs/{name}" };
    }

    /// <summary>All definitions.</summary>
    public JsonObject ToJson() => new(_definitions.Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)pair.Value)));

    /// <summary>Text as YAML sees it: <c>1</c> and <c>true</c> without quotes are text where text is meant.</summary>
    public static JsonArray AnyScalar() => ["string", "number", "boolean"];
}
