using Microsoft.Playwright;
using Proveout.Web.Tests.Samples;

namespace Proveout.Browser.Tests;

public sealed class LiveTests(BrowserFixture browser)
{
    private static readonly LocatorAssertionsToContainTextOptions WithinASecond = new() { Timeout = 1000 };

    [Fact]
    public async Task Two_browsers_see_each_others_entries_within_a_second()
    {
        await using var site = await BenchSite.StartAsync();
        var one = await OpenAndWatchAsync(site, 1);
        var two = await OpenAndWatchAsync(site, 2);

        await EnterAsync(one, Typed.Good(await site.StepAsync(1)));
        await Assertions.Expect(two.Locator(".progress")).ToContainTextAsync("1 done", WithinASecond);

        await WatchingAsync(one);
        await EnterAsync(two, Typed.Good(await site.StepAsync(2)));
        await Assertions.Expect(one.Locator(".progress")).ToContainTextAsync("2 done", WithinASecond);
        await Assertions.Expect(one.Locator("#news")).ToContainTextAsync("was just made in another window.", WithinASecond);
        await one.Context.CloseAsync();
        await two.Context.CloseAsync();
    }

    [Fact]
    public async Task What_is_typed_outlives_an_entry_made_elsewhere()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAndWatchAsync(site, 2);
        var field = page.GetByLabel("What does it read?");
        await field.PressSequentiallyAsync("0.2");
        await PassAsync(site, 1);
        await Assertions.Expect(page.Locator(".progress")).ToContainTextAsync("1 done", WithinASecond);
        await Assertions.Expect(field).ToHaveValueAsync("0.2");
        await Assertions.Expect(field).ToBeFocusedAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_is_typed_outlives_an_entry_made_elsewhere_for_the_same_check()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAndWatchAsync(site, 2);
        await page.GetByLabel("What does it read?").PressSequentiallyAsync("0.2");
        await PassAsync(site, 2);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Pass", WithinASecond);
        await Assertions.Expect(page.GetByLabel("What does it read now?")).ToHaveValueAsync("0.2");
        await Assertions.Expect(page.GetByLabel("What does it read now?")).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_was_refused_outlives_an_entry_made_elsewhere()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAndWatchAsync(site, 2);
        await page.GetByLabel("What does it read?").FillAsync("three");
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToBeInViewportAsync();
        await WatchingAsync(page);
        await PassAsync(site, 1);
        await Assertions.Expect(page.Locator(".progress")).ToContainTextAsync("1 done", WithinASecond);
        await Assertions.Expect(page.GetByLabel("What does it read?")).ToHaveValueAsync("three");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Without_scripts_a_link_refreshes_the_page()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(2)), scripts: false);
        await PassAsync(site, 1);
        await page.GetByRole(AriaRole.Link, new() { Name = "Refresh" }).ClickAsync();
        await Assertions.Expect(page.Locator(".progress")).ToContainTextAsync("1 done");
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAndWatchAsync(BenchSite site, int number)
    {
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(number)), 1280, 900);
        await WatchingAsync(page);
        return page;
    }

    private static async Task PassAsync(BenchSite site, int number) =>
        await site.EnterAsync(await site.StepAsync(number), Typed.Good(await site.StepAsync(number)));

    private static Task WatchingAsync(IPage page) => Assertions.Expect(page.Locator("#news")).ToHaveAttributeAsync("data-watching", "yes");

    private static async Task EnterAsync(IPage page, string reading)
    {
        await page.GetByLabel("What does it read?").FillAsync(reading);
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Pass");
    }
}
