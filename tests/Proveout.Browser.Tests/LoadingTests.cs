using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>A page that takes seconds, because something is computed for the first time.</summary>
public sealed class LoadingTests(BrowserFixture browser)
{
    // A link that is followed and never answered is, to the page that still stands, what a slow answer is.
    [Theory]
    [InlineData("Check plan of Pennywort", true)]
    [InlineData("Describe your machine", true)]
    [InlineData("To the page", false)]
    public async Task While_the_bench_computes_the_page_that_still_stands_says_so(string link, bool isSaid)
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/");
        await page.EvaluateAsync("window.addEventListener('click', (event) => event.preventDefault())");
        await page.GetByRole(AriaRole.Link, new() { Name = link }).First.DispatchEventAsync("click", new { bubbles = true, cancelable = true });
        Assert.Equal("", await BusyAsync(page));
        await Task.Delay(1500);
        Assert.Equal(isSaid, (await BusyAsync(page)).StartsWith("The bench is computing.", StringComparison.Ordinal));
        await page.EvaluateAsync("window.dispatchEvent(new PageTransitionEvent('pageshow'))");
        Assert.Equal("", await BusyAsync(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_link_that_opens_elsewhere_leaves_this_page_as_it_is()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/");
        await page.GetByRole(AriaRole.Link, new() { Name = "Describe your machine" }).First.ClickAsync(new() { Modifiers = [KeyboardModifier.Control] });
        await Task.Delay(1000);
        Assert.Equal("", await BusyAsync(page));
        await page.Context.CloseAsync();
    }

    private static Task<string> BusyAsync(IPage page) => page.EvaluateAsync<string>("document.getElementById('busy').textContent");
}
