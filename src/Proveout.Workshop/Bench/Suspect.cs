using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A mistake that explains the readings so far.</summary>
/// <param name="Sentence">What is wrong.</param>
/// <param name="Probability">Its share among all that explain the readings, 0 to 1.</param>
/// <param name="Severity">What it does.</param>
/// <param name="Consequence">The same in a sentence.</param>
/// <param name="FaultIds">The faults meant: more than one when no check tells them apart.</param>
public sealed record Suspect(string Sentence, double Probability, Severity Severity, string Consequence, IReadOnlyList<string> FaultIds);
