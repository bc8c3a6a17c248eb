namespace Proveout.Browser.Tests;

/// <summary>Every kind of page, by name.</summary>
internal static class PageAddresses
{
    public static async Task<IReadOnlyList<(string Name, string Address)>> AllAsync(BenchSite site)
    {
        var state = await site.StateAsync();
        return
        [
            ("front", "/"),
            ("check", site.Check(state.Steps[0])),
            ("check-kept", site.Check(state.Steps[3])),
            ("pass", site.Check(state.Steps[1])),
            ("fail", site.Check(state.Steps[2])),
            ("list", $"/builds/{site.Build.Id}/checks"),
            ("record", $"/builds/{site.Build.Id}/record"),
            ("plan", $"/machines/{site.Build.MachineId}/plan"),
            ("review", $"/machines/{site.Build.MachineId}/review"),
            ("paper", $"/machines/{site.Build.MachineId}/paper"),
            ("wire", $"/machines/{site.Build.MachineId}/wires/W51"),
            ("missing", "/nothing/here"),
        ];
    }
}
