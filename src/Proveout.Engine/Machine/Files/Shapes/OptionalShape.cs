using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A quantity whose key may be left out.</summary>
/// <typeparam name="T">The quantity.</typeparam>
internal sealed class OptionalShape<T>(Shape<T> inner) : Shape<T?>
    where T : struct
{
    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out T? value)
    {
        var read = inner.TryRead(node, problems, out var present);
        value = present;
        return read;
    }

    public override Node Write(T? value) => inner.Write(value!.Value);

    public override JsonObject Describe(SchemaDefinitions definitions) => inner.Describe(definitions);
}
