using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>One thing that is wrong in one live state, with its figures.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Severity">How bad.</param>
/// <param name="Subject">Terminal, conductor or part.</param>
/// <param name="Value">The figure computed.</param>
/// <param name="Limit">The figure that it is compared with.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="State">The state of the controls.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record LiveFinding(
    LiveFindingKind Kind, Severity Severity, string Subject, double Value, double Limit, string Unit, ControlState State, string Sentence);
