using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The settings as files: a table for a spreadsheet, a page, a print.</summary>
public static class SettingsFiles
{
    private static readonly ScheduleColumn[] Columns =
    [
        new("Setting", 3), new("Value", 3), new("Number"), new("Uncertainty"), new("Unit"), new("Known"), new("From", 3), new("What would change it", 3),
    ];

    private static readonly ScheduleColumn[] Printed = [new("Setting", 3), new("Value", 3), new("Known"), new("From", 2), new("What would change it", 3)];

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
                [.. view.Groups.Select(group => new Schedule(group.Id, group.Title, group.Purpose, Printed, [.. group.Settings.Select(Print)]))],
                []));
    }

    private static string Purpose(SettingsView view) => view.Build.Length > 0
        ? $"What the controllers of build {view.Build} have to be told."
        : "What the controllers have to be told, before anything is measured.";

    private static string[] Row(Setting setting) =>
        [setting.Name, setting.Value, Number(setting.Number), Number(setting.Expanded), setting.Unit, SettingWords.Of(setting.State), setting.From, setting.Later];

    private static string[] Print(Setting setting) => [setting.Name, setting.Value, SettingWords.Of(setting.State), setting.From, setting.Later];

    private static string Number(double? number) => number?.ToString("G6", System.Globalization.CultureInfo.InvariantCulture) ?? "";
}
