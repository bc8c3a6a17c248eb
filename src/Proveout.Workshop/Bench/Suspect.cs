using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A mistake that explains the readings so far.</summary>
/// <param name="Sentence">What is wrong.</param>
/// <param name="Probability">Its share among all that explain the readings, 0 to 1.</param>
/// <param name="Severity">What it does.</param>
/// <param name="Consequence">The same in a sentence.</param>
/// <param name="FaultIds">The faults meant: more than one when no check tells them apart.</param>
public sealed record Suspect(string Sentence, double Probability, Severity Severity, string Consequence, IReadOnlyList<string> FaultIds)
{
    /// <summary>Why it is suspected: the readings that it explains and that a sound machine would not show, a sentence each.</summary>
    public IReadOnlyList<string> Why { get; init; } = [];

    /// <summary>What would rule it out, in a sentence; null when nothing surely can.</summary>
    public string? RuledOutBy { get; init; }
}
