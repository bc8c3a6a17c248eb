namespace Proveout.Workshop;

/// <summary>All builds of a machine, side by side.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Count">How many builds there are.</param>
/// <param name="Complete">Of these, how many have a word on every check of their plan.</param>
/// <param name="SignedOff">How many were signed.</param>
/// <param name="OtherRevisions">How many were started from another revision of the machine file.</param>
/// <param name="Text">What was searched for.</param>
/// <param name="Builds">A page of those found, newest first.</param>
/// <param name="Checks">A page of the checks that were read: those with readings that stand out first, then those that failed most.</param>
/// <param name="Apart">Readings that stand out, furthest first; not all when there are very many.</param>
/// <param name="ApartCount">How many stand out in all.</param>
/// <param name="Mistakes">Mistakes found, most often first.</param>
/// <param name="Learned">What was learned from all builds of the workshop, in sentences.</param>
/// <param name="Unreadable">Builds whose record cannot be read, each in a sentence.</param>
/// <param name="Chosen">The check whose readings were asked for; null when none was.</param>
/// <param name="Plot">Its readings; null with it, and when none has a value.</param>
public sealed record MachineBuilds(
    MachineSummary Machine,
    int Count,
    int Complete,
    int SignedOff,
    int OtherRevisions,
    string Text,
    Paged<BuildRow> Builds,
    Paged<CheckSpread> Checks,
    IReadOnlyList<ReadingApart> Apart,
    int ApartCount,
    IReadOnlyList<MistakeCount> Mistakes,
    IReadOnlyList<string> Learned,
    IReadOnlyList<string> Unreadable,
    CheckSpread? Chosen,
    PlotView? Plot);
