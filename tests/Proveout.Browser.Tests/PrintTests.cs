using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>What comes on paper when a page is printed as it stands.</summary>
public sealed class PrintTests(BrowserFixture browser)
{
    [Fact]
    public async Task Every_page_of_a_dark_screen_is_printed_dark_on_light_paper()
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, "/", scheme: ColorScheme.Dark);
        await page.EmulateMediaAsync(new() { Media = Media.Print, ColorScheme = ColorScheme.Dark });
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            await page.GotoAsync(address);
            var faint = await PageRules.TooFaintAsync(page);
            Assert.True(faint.Length == 0, $"{name}: {string.Join("; ", faint)}");
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_verdict_is_printed_with_its_suspects_and_without_what_can_only_be_tapped()
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(2)));
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator(".verdict")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".suspects > li").First).ToBeVisibleAsync();
        Assert.Equal(0, await page.EvaluateAsync<int>("[...document.querySelectorAll('button, input, .button, nav a')].filter(each => each.getClientRects().length > 0).length"));
        Assert.Equal("auto", await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.suspects').closest('section, .part')).breakInside"));
        await page.Context.CloseAsync();
    }
}
