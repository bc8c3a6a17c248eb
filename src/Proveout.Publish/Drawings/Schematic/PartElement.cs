namespace Proveout.Publish.Drawings;

/// <summary>An element between two terminals that a schematic draws as a symbol.</summary>
internal sealed record PartElement(Symbol Symbol, string A, string B, string Value);
