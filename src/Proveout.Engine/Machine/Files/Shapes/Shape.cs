using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>
/// What a piece of a file may be. One description serves three uses: reading it, writing it, and telling an editor about it (JSON Schema).
/// </summary>
/// <typeparam name="T">What it is in the machine.</typeparam>
internal abstract class Shape<T>
{
    /// <summary>Stands in for what is not given, or could not be read: nothing, and never null for a list or text.</summary>
    public virtual T Fallback => default!;

    /// <summary>Reads a node; false, with a problem added, when there is nothing to go on with.</summary>
    public abstract bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out T value);

    /// <summary>The node that reads as this value.</summary>
    public abstract Node Write(T value);

    /// <summary>The JSON Schema of it.</summary>
    public abstract JsonObject Describe(SchemaDefinitions definitions);

    private protected static ScalarNode Scalar(string text) => new(default, text, plain: false);
}
