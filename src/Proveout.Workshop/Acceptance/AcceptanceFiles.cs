using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The list as files: for a spreadsheet, as a page, on paper.</summary>
public static class AcceptanceFiles
{
    private static readonly ScheduleColumn[] Columns = [new("What", 2.4), new("Do", 4), new("Good", 3), new("Otherwise", 3), new("Source", 1.9), new("Done", 1)];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PaperFile> Of(AcceptanceView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        const string Purpose = "What to watch, prove and look at again, from the first run on.";
        return PaperFiles.Of(
            "acceptance",
            new Schedule("acceptance", "Acceptance", Purpose, [new("When"), .. Columns], [.. view.Items.Select(item => (IReadOnlyList<string>)[AcceptanceWords.Of(item.Phase), .. Row(item)])]),
            new(
                view.Machine.Name,
                Purpose,
                view.Fingerprint,
                [],
                [
                    .. view.Items.GroupBy(item => item.Phase).Select(phase => new Schedule(
                        AcceptanceWords.Id(phase.Key), AcceptanceWords.Of(phase.Key), Purposes(phase.Key), Columns, [.. phase.Select(Row)])
                    {
                        Cautions = AcceptanceView.CautionsOf(phase.Key),
                    }),
                ],
                [])
            {
                Kind = "Acceptance",
            });
    }

    private static string Purposes(AcceptancePhase phase) => phase switch
    {
        AcceptancePhase.FirstRun => "While the machine runs for the first time.",
        AcceptancePhase.Protection => "What has never acted is not known to act.",
        AcceptancePhase.Soak => "As warm and as long as it will be used.",
        _ => "What settles, works loose or wears. Mark each when it is done, with the day.",
    };

    private static string[] Row(AcceptanceItem item) => [item.Title, item.Instruction, item.Good, item.Otherwise, item.Source, Schedule.Box];
}
