using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A machine in the editor.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Design">Its design.</param>
/// <param name="Revision">Number of its revision; 0 when it was never changed.</param>
/// <param name="Files">Its files, by their bare names.</param>
/// <param name="CanEdit">False for a machine that came with the program: it is copied first.</param>
/// <param name="Findings">What the review of its design finds, worst first.</param>
/// <param name="Types">The part types to choose from: the machine's own and those of the catalogue.</param>
public sealed record EditView(
    MachineSummary Machine,
    MachineDesign Design,
    int Revision,
    IReadOnlyList<SourceText> Files,
    bool CanEdit,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<PartType> Types)
{
    /// <summary>The revision that would be taken back next; null when there is none.</summary>
    public SavedRevision? Undo { get; init; }

    /// <summary>The revision that would be made again next; null when there is none.</summary>
    public SavedRevision? Redo { get; init; }

    /// <summary>Texts that somebody entered and that cannot be the machine yet.</summary>
    public IReadOnlyList<MachineDraft> Drafts { get; init; } = [];

    /// <summary>What the review finds of one thing.</summary>
    public IReadOnlyList<Finding> Of(string name) => [.. Findings.Where(finding => finding.Subjects.Contains(name, StringComparer.Ordinal))];
}
