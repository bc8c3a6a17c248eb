using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The settings as files: a table for a spreadsheet, a page, a print.</summary>
public static class SettingsFiles
{
    private static readonly ScheduleColumn[] Columns =
    [
        new("Setting", 3), new("Value", 3), new("Number"), new("Uncertainty"), new("Unit"), new("Known"), new("From", 3), new("What would change it", 3),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PaperFile> Of(SettingsView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return PaperFiles.Of(
            "settings",
            new Schedule("settings", "Settings", Purpose(view), [new("Group"), .. Columns], [.. view.Groups.SelectMany(group => group.Settings.Select(setting => (IReadOnlyList<string>)[group.Title, .. Row(setting)]))]),
            new(
                view.Machine.Name,
                Purpose(view),
                view.Fingerprint,
                SettingsView.Cautions,
                [.. view.Groups.Select(Print), Tried(view.Mistakes)],
                [])
            {
                Kind = "Settings",
            });
    }

    private static string Purpose(SettingsView view) => view.Build.Length > 0
        ? $"What the controllers of build {view.Build} have to be told."
        : "What the controllers have to be told, before anything is measured.";

    private static string[] Row(Setting setting) =>
        [setting.Name, setting.Value, Number(setting.Number), Number(setting.Expanded), setting.Unit, SettingWords.Of(setting.State), setting.From, setting.Later];

    private static Schedule Print(SettingGroup group) => new(
        group.Id,
        group.Title,
        string.Join(" ", [group.Purpose, .. group.Common]),
        [.. group.Headings.Select(heading => new ScheduleColumn(heading, 3))],
        [.. group.Rows]);

    private static Schedule Tried(MistakeTable table) => new(
        "trials",
        "Trials",
        $"Once they are entered: {table.Mistakes.Count(row => row.CaughtBy.Count > 0)} of {table.Mistakes.Count} wrong settings that were thought of are surely shown. {string.Join(" ", table.SetUps.SelectMany(setUp => setUp.Instructions))}",
        [new("Trial", 2), new("Do", 5), new("Right", 1.4), new("Done")],
        [.. table.Checks.Select(check => (IReadOnlyList<string>)[check.Check.Title, check.Check.Instruction, check.Check.Unit.Length > 0 ? check.Expected : "1", Schedule.Box])])
    {
        Cautions = [.. table.SetUps.SelectMany(setUp => setUp.Cautions)],
    };

    private static string Number(double? number) => number?.ToString("G6", System.Globalization.CultureInfo.InvariantCulture) ?? "";
}
