using Microsoft.Playwright;
using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>A bench whose pages a browser has kept for the time without a link.</summary>
internal static class KeptBench
{
    /// <summary>Milliseconds after which what waits has certainly been sent.</summary>
    public const float Soon = 20_000;

    /// <summary>Opens a check, the first when none is named, and waits until the pages ahead are kept.</summary>
    public static async Task<IPage> OpenAndKeepAsync(this BenchSite site, BrowserFixture browser, BenchStep? step = null)
    {
        var page = await site.OpenAsync(browser, site.Check(step ?? await site.StepAsync(1)));
        await Assertions.Expect(page.Locator("#waiting")).ToHaveAttributeAsync("data-ahead", "kept", new() { Timeout = Soon });
        return page;
    }

    /// <summary>Types a reading and enters it.</summary>
    public static async Task EnterAsync(this IPage page, string reading)
    {
        await page.GetByLabel("What does it read?").FillAsync(reading);
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter", Exact = true }).ClickAsync();
    }

    /// <summary>The checks that are dealt with, in the order of the journal: the bench lists first what was dealt with, in the order in which that was done.</summary>
    public static async Task<string[]> DoneAsync(this BenchSite site) =>
        [.. (await site.StateAsync()).Steps.Where(step => step.Status != StepStatus.Open).Select(step => step.Check.Id)];
}
