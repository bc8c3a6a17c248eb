namespace Proveout.Engine.Machine;

/// <summary>Part types to choose from.</summary>
/// <param name="Types">The types, in file order; identifiers are unique.</param>
public sealed record Catalogue(ValueList<PartType> Types)
{
    /// <summary>The type with an identifier, or null.</summary>
    public PartType? FindType(string id) => Types.FirstOrDefault(type => type.Id == id);
}
