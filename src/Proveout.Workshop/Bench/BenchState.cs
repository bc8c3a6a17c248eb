namespace Proveout.Workshop;

/// <summary>Where a build stands.</summary>
/// <param name="Build">The build.</param>
/// <param name="Steps">Every check of the plan, and those asked for since, in the order to do them.</param>
/// <param name="CurrentCheckId">The check to do now; null when nothing is left.</param>
/// <param name="Suspects">Mistakes that explain all readings so far, most likely first; empty while every reading passes.</param>
/// <param name="NextBestCheckId">The check that would tell most about the suspects; null when there are none or nothing tells them apart.</param>
/// <param name="Deviations">Deviations and photographs so far, oldest first.</param>
/// <param name="LastSequence">Sequence number of the last entry.</param>
/// <param name="LastHash">Hash of the last entry, hexadecimal.</param>
public sealed record BenchState(
    BuildSummary Build,
    IReadOnlyList<BenchStep> Steps,
    string? CurrentCheckId,
    IReadOnlyList<Suspect> Suspects,
    string? NextBestCheckId,
    IReadOnlyList<JournalNote> Deviations,
    long LastSequence,
    string LastHash)
{
    /// <summary>Probability that none of the mistakes that Proveout knows explains the readings, but another one, 0 to 1.</summary>
    public double UnknownMistake { get; init; }

    /// <summary>Signatures so far, oldest first.</summary>
    public IReadOnlyList<SignOff> SignOffs { get; init; } = [];

    /// <summary>How many entries were made since a second person signed last, which that signature does not cover; null when no second person signed.</summary>
    public int? SinceChecked { get; init; }

    /// <summary>The check that was read last, in whose set-up the machine therefore stands; null when none was.</summary>
    public string? LastReadCheckId { get; init; }

    /// <summary>Whether the check that was read last would be right with other plugs in or out, in a sentence; empty when it would not, or did not fail.</summary>
    public string PlugHint { get; init; } = "";

    /// <summary>The step of a check, or null.</summary>
    public BenchStep? FindStep(string checkId) => Steps.FirstOrDefault(step => step.Check.Id == checkId);
}
