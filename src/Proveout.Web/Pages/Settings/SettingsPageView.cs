using Proveout.Workshop;

namespace Proveout.Web.Pages.Settings;

/// <summary>What the page of settings shows.</summary>
/// <param name="Sheet">The settings.</param>
/// <param name="Address">Where the page is; its files are below.</param>
public sealed record SettingsPageView(SettingsView Sheet, string Address);
