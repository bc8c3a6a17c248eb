namespace Proveout.Workshop;

/// <summary>A build.</summary>
/// <param name="Id">Identifier, as in addresses.</param>
/// <param name="Serial">Serial number.</param>
/// <param name="MachineId">The machine it is a build of.</param>
/// <param name="MachineName">That machine's name.</param>
/// <param name="Builder">Who builds it.</param>
/// <param name="Started">When it was started, in universal time.</param>
public sealed record BuildSummary(string Id, string Serial, string MachineId, string MachineName, string Builder, DateTimeOffset Started);
