namespace Proveout.Workshop;

/// <summary>What is known of the air in every bay of a machine, before it is first closed.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Bays">Its bays.</param>
public sealed record AirView(MachineSummary Machine, IReadOnlyList<BayView> Bays);
