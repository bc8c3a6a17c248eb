using System.Text.Json;
using System.Text.Json.Serialization;

namespace Proveout.Workshop;

/// <summary>Health as JSON: `proveout-health 1` of docs/json.md.</summary>
public static class HealthText
{
    private const string Format = "proveout-health 1";

    /// <summary>Writes it.</summary>
    public static string Write(BenchHealth health)
    {
        ArgumentNullException.ThrowIfNull(health);
        return JsonSerializer.Serialize(new HealthShape(Format, health.Version, health.IsReady, health.Findings), HealthShapes.Spread.HealthShape);
    }

    /// <summary>Reads it; null when the text is something else.</summary>
    public static BenchHealth? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, HealthShapes.Spread.HealthShape) is { Format: Format, Version: { } version, Findings: { } findings }
                ? new BenchHealth(version, findings)
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>The shape that is written.</summary>
internal sealed record HealthShape(string Format, string Version, bool IsReady, IReadOnlyList<HealthFinding> Findings);

/// <summary>How it is written.</summary>
[JsonSerializable(typeof(HealthShape))]
internal sealed partial class HealthShapes : JsonSerializerContext
{
    /// <summary>With keys as docs/json.md has them.</summary>
    public static HealthShapes Spread { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });
}
