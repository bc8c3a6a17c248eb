using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A check that could be done: two nodes, a set-up and a way of measuring.</summary>
/// <param name="Check">The check, for people and for the plan.</param>
/// <param name="SetUp">Index of its set-up.</param>
/// <param name="A">Node of the red lead.</param>
/// <param name="B">Node of the black lead.</param>
/// <param name="Mode">How it is measured.</param>
internal sealed record CandidateCheck(Check Check, int SetUp, int A, int B, MeterMode Mode);
