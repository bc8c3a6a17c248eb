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
        var page = await site.OpenAsync(browser, "/", width, height, scheme: scheme);
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            await page.GotoAsync(address);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(fold => fold.open = true)");
            broken.AddRange((await PageRules.BrokenAsync(page, scheme)).Select(rule => $"{name}: {rule}"));
        }

        Assert.Empty(broken);
        await page.Context.CloseAsync();
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
        Assert.Empty(await PageRules.BrokenAsync(page, scheme));
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(ColorScheme.Light, "img", "image-alt")]
    [InlineData(ColorScheme.Light, "p", "color-contrast")]
    [InlineData(ColorScheme.Dark, "p", "color-contrast")]
    public async Task A_broken_rule_is_found(ColorScheme scheme, string broken, string rule)
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/health", scheme: scheme);
        await page.EvaluateAsync(
            """
            broken => {
              const added = document.querySelector("main").appendChild(document.createElement(broken));
              added.textContent = "faint";
              added.style.color = "#777";
              added.style.background = "#888";
            }
            """,
            broken);
        Assert.Contains(await PageRules.BrokenAsync(page, scheme), found => found.StartsWith($"{rule}: ", StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }
}
