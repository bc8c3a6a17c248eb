using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>The JSON Schema of machine and catalogue files, for editors; made of the same shapes that read the files.</summary>
public static class MachineSchema
{
    private static readonly JsonWriterOptions Layout = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema, as JSON text (draft 2020-12).</summary>
    public static string Write()
    {
        var definitions = new SchemaDefinitions();
        var machine = MachineDocument.Shape.Describe(definitions);
        var catalogue = CatalogueDocument.Shape.Describe(definitions);
        return ToText(new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Proveout machine file or catalogue file",
            ["oneOf"] = new JsonArray(machine, catalogue),
            ["$defs"] = definitions.ToJson(),
        });
    }

    private static string ToText(JsonObject schema)
    {
        using var buffer = new MemoryStream();
        using (var writer = new Utf8JsonWriter(buffer, Layout))
            schema.WriteTo(writer);
        return System.Text.Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n";
    }
}
