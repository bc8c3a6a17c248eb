namespace Proveout.Engine.Machine;

/// <summary>Where a jumper is fitted.</summary>
/// <param name="Jumper">Name of the jumper on the part's type.</param>
/// <param name="Position">Name of its position.</param>
public sealed record JumperSetting(string Jumper, string Position);
