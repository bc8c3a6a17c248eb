using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Checks done in one set-up.</summary>
/// <param name="SetUp">The set-up.</param>
/// <param name="Checks">Its checks, in the order to do them.</param>
public sealed record PlanGroup(SetUp SetUp, IReadOnlyList<PlannedCheck> Checks);
