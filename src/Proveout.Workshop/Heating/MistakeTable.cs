using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Checks, and what each mistake would do to them.</summary>
/// <param name="SetUps">States that the checks are made in.</param>
/// <param name="Checks">The fewest checks that surely catch all that can be caught, in the order to make them.</param>
/// <param name="Mistakes">The mistakes, the worst first.</param>
public sealed record MistakeTable(IReadOnlyList<SetUp> SetUps, IReadOnlyList<ExpectedCheck> Checks, IReadOnlyList<MistakeRow> Mistakes);
