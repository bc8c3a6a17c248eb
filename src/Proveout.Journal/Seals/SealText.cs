using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Proveout.Journal.Chain;

namespace Proveout.Journal;

/// <summary>A seal as a file of its own, to be kept where nobody who can write the journal can write.</summary>
public static class SealText
{
    private const string Format = "proveout-seal 1";

    /// <summary>The text of a seal, JSON.</summary>
    public static string Write(Seal seal)
    {
        ArgumentNullException.ThrowIfNull(seal);
        var shape = new SealFileShape(
            Format, seal.BuildId.ToString("D"), seal.Entries, seal.Hash, FieldText.Read(FieldText.Write(seal.Sealed)), seal.Person, seal.PublicKey, seal.Signature);
        return JsonSerializer.Serialize(shape, SealFileJson.Spread.SealFileShape) + "\n";
    }

    /// <summary>The seal of a text; null when the text is none. Whether it holds is for the journal to say.</summary>
    public static Seal? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, SealFileJson.Default.SealFileShape) is { Format: Format } shape
                ? new Seal(
                    Guid.ParseExact(shape.Build, "D"), shape.Entries, shape.Hash, FieldText.ReadTime(FieldText.Write(shape.Sealed)), shape.Person, shape.PublicKey,
                    shape.Signature)
                : null;
        }
        catch (Exception cause) when (cause is JsonException or FormatException)
        {
            return null;
        }
    }
}

internal sealed record SealFileShape(
    string Format, string Build, int Entries, string Hash, string Sealed, string Person, string PublicKey, string Signature);

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true, MaxDepth = 4)]
[JsonSerializable(typeof(SealFileShape))]
internal sealed partial class SealFileJson : JsonSerializerContext
{
    public static SealFileJson Spread { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
        NewLine = "\n",
    });
}
