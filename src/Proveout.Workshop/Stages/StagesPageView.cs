namespace Proveout.Workshop;

/// <summary>What the page of stages shows.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Stages">Its stages; null when nothing of it comes later.</param>
public sealed record StagesPageView(MachineSummary Machine, StagesView? Stages);
