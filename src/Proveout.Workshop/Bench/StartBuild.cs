namespace Proveout.Workshop;

/// <summary>Asks for a new build.</summary>
/// <param name="MachineId">Of which machine.</param>
/// <param name="Serial">Serial number; may be empty, then one is made.</param>
/// <param name="Builder">Who builds it.</param>
/// <param name="Instrument">The meter in words, such as "hand-held, 20 Mohm"; may be empty.</param>
public sealed record StartBuild(string MachineId, string Serial, string Builder, string Instrument);
