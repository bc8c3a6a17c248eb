using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A named thing that is one value.</summary>
/// <typeparam name="T">The thing.</typeparam>
/// <typeparam name="TValue">Its value.</typeparam>
internal sealed class PairShape<T, TValue>(Shape<TValue> value, Func<string, TValue, T> make, Func<T, TValue> get) : Shape<T>
{
    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out T result)
    {
        var read = value.TryRead(node, problems, out var inner);
        result = read ? make(node.Name, inner!) : default;
        return read;
    }

    public override Node Write(T item) => value.Write(get(item));

    public override JsonObject Describe(SchemaDefinitions definitions) => value.Describe(definitions);
}
