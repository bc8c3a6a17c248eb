using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A place of the machine with what is looked at there.</summary>
/// <param name="SetUp">The place; its cautions come first.</param>
/// <param name="Checks">What to look at.</param>
public sealed record WalkPlace(SetUp SetUp, IReadOnlyList<WalkCheck> Checks);
