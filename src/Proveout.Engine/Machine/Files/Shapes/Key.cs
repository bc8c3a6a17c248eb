using System.Text.Json.Nodes;

namespace Proveout.Engine.Machine;

/// <summary>A key of a record.</summary>
/// <typeparam name="TOwner">The record.</typeparam>
/// <param name="name">The key.</param>
/// <param name="meaning">What it means; shown by editors.</param>
/// <param name="required">True when it must be given.</param>
internal abstract class Key<TOwner>(string name, string meaning, bool required)
{
    public string Name => name;

    public bool Required => required;

    /// <summary>Stands in for the value when it is not given, or cannot be used; never null for a list or text.</summary>
    public abstract object? Fallback { get; }

    /// <summary>The value under the key; the fallback, with a problem added, when it cannot be used.</summary>
    public abstract object? Read(Node node, Problems problems);

    /// <summary>The node of the owner's value; null when it may be left out.</summary>
    public abstract Node? Write(TOwner owner);

    public JsonObject Describe(SchemaDefinitions definitions)
    {
        var schema = DescribeValue(definitions);
        schema["description"] = meaning;
        return schema;
    }

    /// <summary>A key that must be given.</summary>
    public static Key<TOwner> Needed<T>(string name, string meaning, Shape<T> shape, Func<TOwner, T> get) =>
        new Key<TOwner, T>(name, meaning, shape, get, true, shape.Fallback);

    /// <summary>A key that may be left out; its value is then the shape's fallback.</summary>
    public static Key<TOwner> Optional<T>(string name, string meaning, Shape<T> shape, Func<TOwner, T> get) =>
        Optional(name, meaning, shape, get, shape.Fallback);

    /// <summary>A key that may be left out, with the value that this means.</summary>
    public static Key<TOwner> Optional<T>(string name, string meaning, Shape<T> shape, Func<TOwner, T> get, T leftOut) =>
        new Key<TOwner, T>(name, meaning, shape, get, false, leftOut);

    private protected abstract JsonObject DescribeValue(SchemaDefinitions definitions);
}

/// <summary>A key whose value has a type.</summary>
/// <typeparam name="TOwner">The record.</typeparam>
/// <typeparam name="T">The value.</typeparam>
/// <param name="name">The key.</param>
/// <param name="meaning">What it means; shown by editors.</param>
/// <param name="shape">The shape of its value.</param>
/// <param name="get">The owner's value.</param>
/// <param name="required">True when it must be given.</param>
/// <param name="fallback">The value when it is not given.</param>
internal sealed class Key<TOwner, T>(string name, string meaning, Shape<T> shape, Func<TOwner, T> get, bool required, T fallback)
    : Key<TOwner>(name, meaning, required)
{
    public override object? Fallback => fallback;

    public override object? Read(Node node, Problems problems) => shape.TryRead(node, problems, out var value) ? value : fallback;

    public override Node? Write(TOwner owner)
    {
        var value = get(owner);
        if (!Required && EqualityComparer<T>.Default.Equals(value, fallback))
            return null;
        var node = shape.Write(value);
        node.Key = new ScalarNode(default, Name, plain: true);
        return node;
    }

    private protected override JsonObject DescribeValue(SchemaDefinitions definitions) => shape.Describe(definitions);
}
