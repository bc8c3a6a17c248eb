using Microsoft.Playwright;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>The link goes down: nothing that was entered is lost, doubled or out of order.</summary>
public sealed class OfflineTests(BrowserFixture browser)
{
    private static readonly LocatorAssertionsToBeHiddenOptions Soon = new() { Timeout = KeptBench.Soon };

    [Fact]
    public async Task Three_readings_entered_without_a_link_are_recorded_once_and_in_order()
    {
        await using var site = await BenchSite.StartAsync();
        var steps = (await site.StateAsync()).Steps.Take(3).ToArray();
        var page = await site.OpenAndKeepAsync(browser);
        await site.StopAsync();
        foreach (var step in steps)
        {
            await page.EnterAsync(Typed.Good(step));
            await Assertions.Expect(page.Locator("#waiting li").Last).ToContainTextAsync(step.Check.Title);
            await page.Locator("#waiting").GetByRole(AriaRole.Link, new() { Name = "Next check" }).ClickAsync();
            await Assertions.Expect(page.Locator("#kept-note")).ToBeVisibleAsync();
        }

        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(3);
        await site.StartAgainAsync();
        await Assertions.Expect(page.Locator("#waiting")).ToBeHiddenAsync(Soon);
        await Assertions.Expect(page.Locator("#kept-note")).ToBeHiddenAsync();
        Assert.Equal(steps.Select(step => step.Check.Id), await site.DoneAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_waits_outlives_the_closed_page()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAndKeepAsync(browser);
        var address = page.Url;
        await site.StopAsync();
        await page.EnterAsync(Typed.Good((await site.StateAsync()).Steps[0]));
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(1);
        await page.CloseAsync();

        var again = await page.Context.NewPageAsync();
        await again.GotoAsync(address);
        await Assertions.Expect(again.Locator("#waiting li")).ToHaveCountAsync(1);
        await site.StartAgainAsync();
        await Assertions.Expect(again.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Pass", new() { Timeout = 20_000 });
        Assert.Single(await site.DoneAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_reading_that_somebody_else_took_meanwhile_is_not_overturned_and_the_refusal_is_shown()
    {
        await using var site = await BenchSite.StartAsync();
        var step = await site.StepAsync(1);
        var page = await site.OpenAndKeepAsync(browser);
        await site.StopAsync();
        await page.EnterAsync(Typed.Bad(step));
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(1);
        var other = await site.Bench.EnterReadingAsync(site.Build.Id, new ReadingRequest(step.Check.Id, Typed.Good(step), "Ida Brandt", Guid.NewGuid()), default);
        Assert.NotNull(other.Value);
        await site.StartAgainAsync();
        await Assertions.Expect(page.Locator("#waiting")).ToContainTextAsync("Refused: Meanwhile Ida Brandt entered", new() { Timeout = 20_000 });
        Assert.Equal(StepStatus.Passed, (await site.StepAsync(1)).Status);

        await page.GetByRole(AriaRole.Button, new() { Name = "Send it again" }).ClickAsync();
        await Assertions.Expect(page.Locator("#waiting")).ToBeHiddenAsync(Soon);
        Assert.Equal(StepStatus.Failed, (await site.StepAsync(1)).Status);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Two_browsers_deliver_what_each_kept()
    {
        await using var site = await BenchSite.StartAsync();
        var steps = (await site.StateAsync()).Steps.Take(2).ToArray();
        var one = await site.OpenAndKeepAsync(browser);
        var two = await site.OpenAndKeepAsync(browser);
        await two.GotoAsync(site.Check(steps[1]));
        await site.StopAsync();
        await one.EnterAsync(Typed.Good(steps[0]));
        await two.EnterAsync(Typed.Good(steps[1]));
        await Assertions.Expect(one.Locator("#waiting li")).ToHaveCountAsync(1);
        await Assertions.Expect(two.Locator("#waiting li")).ToHaveCountAsync(1);
        await site.StartAgainAsync();
        await Assertions.Expect(one.Locator("#waiting")).ToBeHiddenAsync(Soon);
        await Assertions.Expect(two.Locator("#waiting")).ToBeHiddenAsync(Soon);
        Assert.Equal(steps.Select(step => step.Check.Id).Order(StringComparer.Ordinal), (await site.DoneAsync()).Order(StringComparer.Ordinal));
        await one.Context.CloseAsync();
        await two.Context.CloseAsync();
    }

    [Fact]
    public async Task A_page_that_was_not_kept_says_that_there_is_no_link()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAndKeepAsync(browser);
        await site.StopAsync();
        await page.GotoAsync("/motor");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("No link to the bench");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_kept_page_shows_its_cautions_in_full_and_its_set_up_open()
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var kept = (await site.StateAsync()).Steps.First(step => step.Status == StepStatus.Open && !step.SetUpChanges);
        var page = await site.OpenAndKeepAsync(browser, kept);
        await site.StopAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#kept-note")).ToContainTextAsync("kept at");
        await Assertions.Expect(page.Locator(".caution")).Not.ToHaveClassAsync("caution-kept");
        await Assertions.Expect(page.Locator("[data-fold='set-up']:not([open])")).ToHaveCountAsync(0);
        await page.Context.CloseAsync();
    }
}
