using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A check on the energised machine, and what it shows in a solution.</summary>
/// <param name="Check">The check; its set-up is that of <paramref name="Stage"/> and <paramref name="State"/>.</param>
/// <param name="Stage">What is apart; null when nothing is.</param>
/// <param name="State">The state of the controls.</param>
/// <param name="Show">What it may show in a solution of that state.</param>
internal sealed record LiveObservation(Check Check, LiveStage? Stage, ControlState State, Func<LiveView, ReadingInterval> Show);
