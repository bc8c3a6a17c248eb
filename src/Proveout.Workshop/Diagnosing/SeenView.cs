using Proveout.Engine.Faults;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>What can be said of a machine by who sees it move, and what the answers so far say.</summary>
/// <param name="Questions">Everything that can be seen, with what was said of it.</param>
/// <param name="Reported">What was said or read, in words.</param>
/// <param name="Suspects">Mistakes that explain it, most likely first; empty while nothing is off.</param>
/// <param name="Unknown">Probability that none of the mistakes that Proveout knows explains it, 0 to 1.</param>
/// <param name="Next">The check that would tell most; null when there is none.</param>
/// <param name="NextSetUp">The state in which it is done; null with it.</param>
public sealed record SeenView(
    IReadOnlyList<SeenAnswer> Questions, IReadOnlyList<string> Reported, IReadOnlyList<Suspect> Suspects, double Unknown, Check? Next, SetUp? NextSetUp)
{
    /// <summary>Readings of hand checks among what was said, by the identifier of the check.</summary>
    public IReadOnlyDictionary<string, double> Readings { get; init; } = new Dictionary<string, double>();

    /// <summary>True when something was said or read.</summary>
    public bool IsAsked => Reported.Count > 0;
}

/// <summary>A question with what was answered.</summary>
/// <param name="Question">The question.</param>
/// <param name="Chosen">Number of the outcome that was seen; null when nobody looked.</param>
public sealed record SeenAnswer(SeenQuestion Question, double? Chosen);
