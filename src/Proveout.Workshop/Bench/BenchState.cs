using Proveout.Engine.Faults;

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
    /// <summary>The step of a check, or null.</summary>
    public BenchStep? FindStep(string checkId) => Steps.FirstOrDefault(step => step.Check.Id == checkId);
}

/// <summary>One check on the bench.</summary>
/// <param name="Number">Place in the order, from 1.</param>
/// <param name="Check">The check.</param>
/// <param name="SetUp">The state in which it is done.</param>
/// <param name="SetUpChanges">True when the step before it is done in another state.</param>
/// <param name="MeterSetting">What to set on the meter.</param>
/// <param name="Expected">What it should read, in words and units.</param>
/// <param name="Status">What has become of it.</param>
/// <param name="ReadingText">The reading as typed; empty when there is none.</param>
/// <param name="ReadingShown">The reading as understood, with its unit; empty when there is none.</param>
/// <param name="Reason">Why it was skipped; empty when it was not.</param>
/// <param name="Person">Who did it; empty when nobody has.</param>
/// <param name="CatchesShort">What it would catch, in a few words.</param>
public sealed record BenchStep(
    int Number,
    Check Check,
    SetUp SetUp,
    bool SetUpChanges,
    string MeterSetting,
    string Expected,
    StepStatus Status,
    string ReadingText,
    string ReadingShown,
    string Reason,
    string Person,
    string CatchesShort);

/// <summary>What has become of a step.</summary>
public enum StepStatus
{
    /// <summary>Not done yet.</summary>
    Open,

    /// <summary>Read as expected.</summary>
    Passed,

    /// <summary>Read otherwise.</summary>
    Failed,

    /// <summary>Read, but the reading says nothing.</summary>
    CannotTell,

    /// <summary>Left out with a reason.</summary>
    Skipped,
}

/// <summary>A mistake that explains the readings so far.</summary>
/// <param name="Sentence">What is wrong.</param>
/// <param name="Probability">Its share among all that explain the readings, 0 to 1.</param>
/// <param name="Severity">What it does.</param>
/// <param name="Consequence">The same in a sentence.</param>
/// <param name="FaultIds">The faults meant: more than one when no check tells them apart.</param>
public sealed record Suspect(string Sentence, double Probability, Severity Severity, string Consequence, IReadOnlyList<string> FaultIds);

/// <summary>A deviation or photograph in the journal.</summary>
/// <param name="Sequence">Entry number.</param>
/// <param name="When">When, in universal time.</param>
/// <param name="Person">Who.</param>
/// <param name="Subject">What it concerns: a check or a part; may be empty.</param>
/// <param name="Text">The note or caption.</param>
/// <param name="PhotoSha256">Hash that names the photograph; null when there is none.</param>
public sealed record JournalNote(long Sequence, DateTimeOffset When, string Person, string Subject, string Text, string? PhotoSha256);
