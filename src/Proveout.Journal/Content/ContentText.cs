using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Proveout.Journal;

/// <summary>The stored form of contents: JSON (RFC 8259) with the kind first and the fields in the order of their declaration.</summary>
internal static class ContentText
{
    // Relaxed, so that Ω and ° stay legible to whoever opens the file by hand; the text is never put into a page as it is.
    private static readonly ContentJson Json = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    public static byte[] Write(EntryContent content) => JsonSerializer.SerializeToUtf8Bytes(content, Json.EntryContent);

    /// <exception cref="JsonException">The bytes are not a content of this format.</exception>
    public static EntryContent Read(ReadOnlySpan<byte> utf8) =>
        JsonSerializer.Deserialize(utf8, Json.EntryContent) ?? throw new JsonException("The content is null.");
}

[JsonSerializable(typeof(EntryContent))]
internal sealed partial class ContentJson : JsonSerializerContext;
