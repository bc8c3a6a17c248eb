using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Proveout.Cli;

/// <summary>Writes data as JSON text.</summary>
internal static class JsonText
{
    public static string Of<T>(T data, JsonTypeInfo<T> shape) => JsonSerializer.Serialize(data, shape);
}
