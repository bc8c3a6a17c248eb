namespace Proveout.Engine.Machine;

/// <summary>The values of a record as they were read, by key.</summary>
/// <param name="name">The name under which the record stands; empty when it has none.</param>
/// <param name="positions">The position of each key.</param>
/// <param name="values">A value for every key.</param>
internal sealed class Fields(string name, IReadOnlyDictionary<string, int> positions, object?[] values)
{
    public string Name => name;

    public T Get<T>(string key) => (T)values[positions[key]]!;

    public string Text(string key) => Get<string>(key);
}
