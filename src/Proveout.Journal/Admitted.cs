namespace Proveout.Journal;

/// <summary>What came of taking in the record of a build.</summary>
/// <param name="Build">The build.</param>
/// <param name="WereThere">How many of its entries the journal had already.</param>
/// <param name="Added">How many were added.</param>
/// <param name="LastHash">Hash of the last entry of the record taken in.</param>
public sealed record Admitted(Build Build, int WereThere, int Added, string LastHash);
