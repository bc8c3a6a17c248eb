using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A mistake, with what catches it.</summary>
/// <param name="Fault">The mistake.</param>
/// <param name="CaughtBy">Titles of the checks of the plan that surely catch it; empty when none does.</param>
public sealed record MistakeRow(Fault Fault, IReadOnlyList<string> CaughtBy);
