namespace Proveout.Workshop;

/// <summary>Settings that belong together.</summary>
/// <param name="Id">Identifier, lower case with hyphens.</param>
/// <param name="Title">Title.</param>
/// <param name="Purpose">What they are for, in a sentence or two.</param>
/// <param name="Settings">The settings.</param>
public sealed record SettingGroup(string Id, string Title, string Purpose, IReadOnlyList<Setting> Settings)
{
    /// <summary>Where all of them come from, and how well they are known; null when they differ.</summary>
    public Setting? AllFrom => Settings.Count > 1 && Settings.All(setting => (setting.State, setting.From) == (Settings[0].State, Settings[0].From)) ? Settings[0] : null;

    /// <summary>What would change any of them; null when they differ.</summary>
    public string? AllLater => Settings.Count > 1 && Settings.All(setting => setting.Later == Settings[0].Later) ? Settings[0].Later : null;

    /// <summary>What holds for all of them, in sentences; empty when nothing does.</summary>
    public IReadOnlyList<string> Common =>
    [
        .. AllFrom is { } from ? [$"All {SettingWords.Of(from.State)}: {from.From}"] : Array.Empty<string>(),
        .. AllLater is { } later ? [$"What would change any of them: {later}"] : Array.Empty<string>(),
    ];

    /// <summary>Headings of a table of them: what holds for all of them stands once, before it.</summary>
    public IReadOnlyList<string> Headings => ["Setting", "Value", .. AllFrom is null ? ["Known"] : Array.Empty<string>(), .. AllLater is null ? ["What would change it"] : Array.Empty<string>()];

    /// <summary>The rows of that table.</summary>
    public IEnumerable<IReadOnlyList<string>> Rows => Settings.Select(setting => (IReadOnlyList<string>)
    [
        setting.Name,
        setting.Value,
        .. AllFrom is null ? [$"{SettingWords.Of(setting.State)}: {setting.From}"] : Array.Empty<string>(),
        .. AllLater is null ? [setting.Later] : Array.Empty<string>(),
    ]);
}
