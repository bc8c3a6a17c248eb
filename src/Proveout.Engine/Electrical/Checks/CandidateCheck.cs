using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A check that could be done: two nodes, a set-up and a way of measuring.</summary>
/// <param name="Check">The check, for people and for the plan.</param>
/// <param name="SetUp">Index of its set-up.</param>
/// <param name="A">Node of the red lead.</param>
/// <param name="B">Node of the black lead.</param>
/// <param name="Mode">How it is measured.</param>
/// <param name="TiedTo">Node that a short lead joins to that of the red lead for this check; null when none does.</param>
internal sealed record CandidateCheck(Check Check, int SetUp, int A, int B, MeterMode Mode, int? TiedTo = null);
