namespace Proveout.Engine.Machine;

/// <summary>A field of a thing that is added.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Value">Its value.</param>
public sealed record EditedField(string Key, EditedValue Value);
