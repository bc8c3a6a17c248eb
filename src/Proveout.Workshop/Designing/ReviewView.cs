using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>What the review of a design finds.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Findings">What was found, worst first.</param>
/// <param name="Rules">How many rules looked.</param>
public sealed record ReviewView(MachineSummary Machine, IReadOnlyList<Finding> Findings, int Rules);
