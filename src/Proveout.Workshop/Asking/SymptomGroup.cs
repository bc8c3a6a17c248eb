using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Symptoms that are looked at in one state of the machine.</summary>
/// <param name="SetUp">The state; its cautions come first.</param>
/// <param name="Symptoms">The symptoms.</param>
public sealed record SymptomGroup(SetUp SetUp, IReadOnlyList<SymptomAnswer> Symptoms);
