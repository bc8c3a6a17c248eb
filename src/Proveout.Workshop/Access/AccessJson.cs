using System.Text.Json.Serialization;

namespace Proveout.Workshop;

/// <summary>The access book as it stands in its file.</summary>
internal sealed record AccessPage(string Format, AccessBook Book);

/// <summary>The shape of that file.</summary>
[JsonSourceGenerationOptions(WriteIndented = true, UseStringEnumConverter = true)]
[JsonSerializable(typeof(AccessPage))]
internal sealed partial class AccessJson : JsonSerializerContext;
