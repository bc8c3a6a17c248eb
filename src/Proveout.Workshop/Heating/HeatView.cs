namespace Proveout.Workshop;

/// <summary>What is known of everything that a machine heats, before it is first heated.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Bodies">What it heats.</param>
public sealed record HeatView(MachineSummary Machine, IReadOnlyList<HeatedView> Bodies);
