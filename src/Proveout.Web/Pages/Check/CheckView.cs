using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Check;

/// <summary>What the page of one check shows.</summary>
/// <param name="State">Where the build stands.</param>
/// <param name="Step">The check.</param>
/// <param name="Drawing">Markup of the drawing; empty when there is none.</param>
/// <param name="Person">Who sits here.</param>
/// <param name="Refusal">A form that was not taken; null when there is none.</param>
public sealed record CheckView(BenchState State, BenchStep Step, string Drawing, string Person, Refusal? Refusal)
{
    private const int KeptAhead = 12;

    public string BuildId => State.Build.Id;

    public string Address => Addresses.Check(BuildId, Step.Check.Id);

    public bool IsDone => Step.Status != StepStatus.Open;

    /// <summary>True when the machine may stand in another set-up than this check's: the plan changes it here, or the check read last was in another.</summary>
    public bool SetUpChanges =>
        Step.SetUpChanges || (State.LastReadCheckId is { } last && State.FindStep(last)?.SetUp.Id != Step.SetUp.Id);

    /// <summary>True when a meter is at hand that gives this check's reading by itself.</summary>
    public bool HasMeter { get; init; }

    /// <summary>What the meter just gave, not entered yet; null when it was not asked.</summary>
    public MeterReading? Taken { get; init; }

    /// <summary>How many steps are dealt with.</summary>
    public int DoneCount => State.Steps.Count(step => step.Status != StepStatus.Open);

    public BenchStep? Before => State.Steps.LastOrDefault(step => step.Number < Step.Number);

    /// <summary>The checks to do after this one, in order; a device keeps their pages for a link that goes down.</summary>
    public IEnumerable<BenchStep> Ahead => State.Steps.Where(step => step.Status == StepStatus.Open && step.Number > Step.Number).Take(KeptAhead);

    /// <summary>The check to do after this one; null when nothing is left.</summary>
    public BenchStep? Next => State.CurrentCheckId is { } id && id != Step.Check.Id ? State.FindStep(id) : null;

    /// <summary>The check that would tell most about the suspects; null when there is none, or it is this one.</summary>
    public BenchStep? NextBest => State.NextBestCheckId is { } id && id != Step.Check.Id ? State.FindStep(id) : null;

    /// <summary>What other builds of the machine noted here.</summary>
    public IReadOnlyList<DeviationHint> Hints { get; init; } = [];

    public IEnumerable<JournalNote> Notes => State.Deviations.Where(note => note.Subject == Step.Check.Id);
}
