using Proveout.Workshop;

namespace Proveout.Web.Pages.Edit;

/// <summary>The revisions of a machine.</summary>
public sealed record RevisionsPageView(MachineSummary Machine, IReadOnlyList<RevisionView> Revisions, IReadOnlyList<string> Files);
