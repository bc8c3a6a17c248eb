using Microsoft.Playwright;
using Proveout.Web.Tests.Samples;

namespace Proveout.Browser.Tests;

/// <summary>
/// The browser itself has no network, as a phone in a cellar, while the bench goes on: it knows at once that the link is down and at once that it is back
/// (`navigator.onLine` and its events, HTML, "Browser state"). <see cref="OfflineTests"/> stops the bench instead.
/// </summary>
public sealed class LinkDownTests(BrowserFixture browser)
{
    [Fact]
    public async Task Readings_entered_offline_outlive_a_reload_and_are_recorded_once_and_in_order()
    {
        await using var site = await BenchSite.StartAsync();
        var before = await site.StateAsync();
        var steps = before.Steps.Take(3).ToArray();
        var page = await site.OpenAndKeepAsync(browser);
        await page.Context.SetOfflineAsync(true);
        foreach (var step in steps)
        {
            await page.GotoAsync(site.Check(step));
            await Assertions.Expect(page.Locator("#kept-note")).ToBeVisibleAsync();
            await page.EnterAsync(Typed.Good(step));
            await Assertions.Expect(page.Locator("#waiting li").Last).ToContainTextAsync(step.Check.Title);
        }

        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#kept-note")).ToContainTextAsync("kept at");
        await Assertions.Expect(page.Locator("#waiting h2")).ToHaveTextAsync("Not yet recorded: 3");
        Assert.Empty(await site.DoneAsync());

        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#waiting")).ToBeHiddenAsync(new() { Timeout = KeptBench.Soon });
        await Assertions.Expect(page.Locator("#kept-note")).ToBeHiddenAsync(new() { Timeout = KeptBench.Soon });
        Assert.Equal(steps.Select(step => step.Check.Id), await site.DoneAsync());
        Assert.Equal(before.LastSequence + 3, (await site.StateAsync()).LastSequence);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_same_button_tapped_twice_offline_is_one_entry()
    {
        await using var site = await BenchSite.StartAsync();
        var step = await site.StepAsync(1);
        var page = await site.OpenAndKeepAsync(browser);
        await page.Context.SetOfflineAsync(true);
        await page.GetByLabel("What does it read?").FillAsync(Typed.Good(step));
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter", Exact = true }).DblClickAsync();
        await Assertions.Expect(page.Locator("#waiting li")).ToHaveCountAsync(1);
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#waiting")).ToBeHiddenAsync(new() { Timeout = KeptBench.Soon });
        Assert.Single(await site.DoneAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_photograph_taken_offline_waits_and_is_attached_when_the_link_is_back()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAndKeepAsync(browser);
        var picture = await page.PictureAsync();
        await page.Context.SetOfflineAsync(true);
        await page.GetByText("Attach a photograph").ClickAsync();
        await page.GetByLabel("What does it show?").FillAsync("The bond");
        await page.GetByLabel("Photograph", new() { Exact = true }).SetInputFilesAsync(new FilePayload { Name = "bond.png", MimeType = "image/png", Buffer = picture });
        await page.GetByRole(AriaRole.Button, new() { Name = "Attach it" }).ClickAsync();
        await Assertions.Expect(page.Locator("#waiting li")).ToContainTextAsync("Photograph The bond");
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#waiting")).ToBeHiddenAsync(new() { Timeout = KeptBench.Soon });
        Assert.Equal("The bond", Assert.Single((await site.StateAsync()).Deviations).Text);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_form_that_cannot_wait_stays_as_it_was_typed_and_says_that_nothing_was_entered()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAndKeepAsync(browser);
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Radio, new() { Name = "Pennywort" }).CheckAsync();
        await page.GetByLabel("Serial number").FillAsync("oven-9");
        await page.GetByLabel("Who builds it?").FillAsync("Ida Brandt");
        await page.Context.SetOfflineAsync(true);
        // The test driver takes an answer without content for a page that is still on its way, so it is not waited for.
        await page.EvaluateAsync("document.querySelector('form[data-form=start] button[type=submit]').click()");
        for (var tries = 0; tries < 50 && !await page.Locator("#lost-note").IsVisibleAsync(); tries++)
            await Task.Delay(100);
        Assert.Contains("No link to the bench: nothing was entered.", await page.EvaluateAsync<string>("document.getElementById('lost-note').innerText"), StringComparison.Ordinal);
        Assert.Equal("oven-9", await page.EvaluateAsync<string>("document.querySelector('[name=serial]').value"));
        Assert.Single(await site.Bench.BuildsAsync(default));

        await page.Context.SetOfflineAsync(false);
        await page.EvaluateAsync("document.querySelector('form[data-form=start] button[type=submit]').click()");
        await Assertions.Expect(page.GetByLabel("What does it read?")).ToBeVisibleAsync();
        Assert.Equal(2, (await site.Bench.BuildsAsync(default)).Count);
        await page.Context.CloseAsync();
    }
}
