using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>A mistake that could do harm at a stage and that no check before it has surely excluded.</summary>
/// <param name="Fault">Index of the fault.</param>
/// <param name="Severity">What it does at this stage.</param>
/// <param name="Sentence">The same in a sentence, with figures.</param>
/// <param name="Precaution">What keeps it from doing harm.</param>
public sealed record ResidualRisk(int Fault, Severity Severity, string Sentence, Precaution Precaution);
