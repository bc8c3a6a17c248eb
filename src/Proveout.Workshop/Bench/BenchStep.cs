using Proveout.Engine.Faults;

namespace Proveout.Workshop;

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
    string CatchesShort)
{
    /// <summary>Which leads stay where they are, in a sentence; empty when none does, or when it is neither the check to do now nor the one worth most.</summary>
    public string Leads { get; init; } = "";

    /// <summary>True when it comes next and the meter is to be set to another kind of measurement for it.</summary>
    public bool ChangesMeter { get; init; }
}
