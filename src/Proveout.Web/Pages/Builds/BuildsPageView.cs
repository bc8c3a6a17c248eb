using System.Globalization;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Builds;

/// <summary>What the page of all builds of a machine shows, and the addresses of its other pages.</summary>
/// <param name="Builds">The builds.</param>
/// <param name="Query">What was asked for.</param>
public sealed record BuildsPageView(MachineBuilds Builds, BuildsQuery Query)
{
    public string OfPage(int page) => Of(Query with { Page = page }, "builds");

    public string OfChecks(int page) => Of(Query with { ChecksPage = page }, "checks");

    public string OfCheck(string check) => Of(Query with { CheckId = check }, "one-check");

    private string Of(BuildsQuery query, string place)
    {
        List<string> parts = [];
        if (query.Text.Length > 0)
            parts.Add($"find={Uri.EscapeDataString(query.Text)}");
        if (query.Page > 1)
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"page={query.Page}"));
        if (query.CheckId.Length > 0)
            parts.Add($"check={Uri.EscapeDataString(query.CheckId)}");
        if (query.ChecksPage > 1)
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"checks={query.ChecksPage}"));
        return $"{Addresses.Builds(Builds.Machine.Id)}{(parts.Count > 0 ? "?" : "")}{string.Join('&', parts)}#{place}";
    }
}
