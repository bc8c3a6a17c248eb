namespace Proveout.Workshop;

/// <summary>Where a try to come in is from.</summary>
/// <param name="Address">The network address, as far as tries are counted by it.</param>
/// <param name="Device">The device in a word, and where it called from.</param>
public sealed record Caller(string Address, string Device);
