namespace Proveout.Workshop;

/// <summary>Settings that belong together.</summary>
/// <param name="Id">Identifier, lower case with hyphens.</param>
/// <param name="Title">Title.</param>
/// <param name="Purpose">What they are for, in a sentence or two.</param>
/// <param name="Settings">The settings.</param>
public sealed record SettingGroup(string Id, string Title, string Purpose, IReadOnlyList<Setting> Settings);
