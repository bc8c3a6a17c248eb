using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Everything that a machine's controllers have to be told.</summary>
internal sealed record SettingsShape(string Format, string Machine, string Fingerprint, string Build, IReadOnlyList<SettingGroupShape> Groups, MistakeTableShape Mistakes)
{
    public static SettingsShape Of(SettingsView view) => new(
        "proveout-settings 1", view.Machine.Name, view.Fingerprint, view.Build, [.. view.Groups.Select(SettingGroupShape.Of)], MistakeTableShape.Of(view.Mistakes));
}

/// <summary>Settings that belong together.</summary>
internal sealed record SettingGroupShape(string Id, string Title, string Purpose, IReadOnlyList<SettingShape> Settings)
{
    public static SettingGroupShape Of(SettingGroup group) => new(group.Id, group.Title, group.Purpose, [.. group.Settings.Select(SettingShape.Of)]);
}

/// <summary>One setting; number, uncertainty and unit where the value is a number.</summary>
internal sealed record SettingShape(string Id, string Name, string Value, double? Number, double? ExpandedUncertainty, string Unit, string Known, string From, string Later)
{
    public static SettingShape Of(Setting setting) => new(
        setting.Id, setting.Name, setting.Value, setting.Number, setting.Expanded, setting.Unit, SettingWords.Of(setting.State), setting.From, setting.Later);
}
