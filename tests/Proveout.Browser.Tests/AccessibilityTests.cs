using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>Every page against the rules that axe-core can decide (WCAG 2.2 A and AA, and its own good practice).</summary>
public sealed class AccessibilityTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(ColorScheme.Light, 390, 844)]
    [InlineData(ColorScheme.Dark, 390, 844)]
    [InlineData(ColorScheme.Light, 1280, 900)]
    [InlineData(ColorScheme.Dark, 1280, 900)]
    public async Task No_page_breaks_a_rule(ColorScheme scheme, int width, int height)
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var broken = new List<string>();
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            var page = await site.OpenAsync(browser, address, width, height, scheme: scheme);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(fold => fold.open = true)");
            broken.AddRange(await ViolationsAsync(page, name));
            await page.Context.CloseAsync();
        }

        Assert.Empty(broken);
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task No_refused_form_breaks_a_rule(ColorScheme scheme)
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(1)), scheme: scheme);
        await page.GetByLabel("What does it read?").FillAsync("three");
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("`three` is not a reading.");
        Assert.Empty(await ViolationsAsync(page, "refused reading"));
        await page.Context.CloseAsync();
    }

    private static async Task<IEnumerable<string>> ViolationsAsync(IPage page, string name)
    {
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        return result.Violations.Select(item => $"{name}: {Describe(item)}");
    }

    private static string Describe(AxeResultItem item) => $"{item.Id}: {item.Help}: {string.Join(", ", item.Nodes.Take(3).Select(node => node.Html))}";
}
