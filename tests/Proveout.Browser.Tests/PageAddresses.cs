namespace Proveout.Browser.Tests;

/// <summary>Every kind of page, by name.</summary>
internal static class PageAddresses
{
    public static IReadOnlyList<(string Name, string Address)> All(BenchSite site) =>
    [
        ("front", "/"),
        ("check", site.Check("bond-panel")),
        ("check-kept", site.Check("heater")),
        ("pass", site.Check("line-to-relay")),
        ("fail", site.Check("line-to-neutral")),
        ("list", $"/builds/{site.Build.Id}/checks"),
        ("record", $"/builds/{site.Build.Id}/record"),
        ("plan", $"/machines/{site.Build.MachineId}/plan"),
        ("missing", "/nothing/here"),
    ];
}
