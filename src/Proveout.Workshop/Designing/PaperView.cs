namespace Proveout.Workshop;

/// <summary>What there is to work from on paper.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Cautions">What can hurt; shown before everything that is done.</param>
/// <param name="Tables">The schedules, in the order in which a builder needs them.</param>
public sealed record PaperView(MachineSummary Machine, IReadOnlyList<string> Cautions, IReadOnlyList<PaperTable> Tables);
