using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Record;

/// <summary>What the record page shows.</summary>
public sealed record RecordView(BenchState State, string Person, bool HasReport, Refusal? Refusal)
{
    public string Address => Addresses.Record(State.Build.Id);

    public int CountOf(StepStatus status) => State.Steps.Count(step => step.Status == status);

    /// <summary>A check's title when the subject names a check, else the subject as it stands.</summary>
    public string SubjectName(string subject) => State.FindStep(subject)?.Check.Title ?? subject;
}
