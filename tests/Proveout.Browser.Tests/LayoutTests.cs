namespace Proveout.Browser.Tests;

public sealed class LayoutTests(BrowserFixture browser)
{
    // 390 is the phone; 640 is a window of 1280 at 200 %, and 320 one at 400 % (WCAG 2.2, 1.4.10); 195 is the phone at 200 %.
    [Theory]
    [InlineData(390, 844)]
    [InlineData(640, 450)]
    [InlineData(320, 256)]
    [InlineData(195, 422)]
    public async Task No_page_scrolls_sideways(int width, int height)
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, "/", width, height);
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            await page.GotoAsync(address);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(fold => fold.open = true)");
            var wide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            Assert.True(wide <= width, $"{name} is {wide} wide in a window of {width}.");
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Everything_to_tap_is_44_pixels_high_or_a_link_in_a_sentence()
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, "/");
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            await page.GotoAsync(address);
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(fold => fold.open = true)");
            var small = await page.EvaluateAsync<string[]>("""
                () => {
                const isInSentence = each => each.matches("p > a:not(.button)") && each.parentElement.textContent.trim().length > each.textContent.trim().length;
                return [...document.querySelectorAll("a, button, summary, select, input:not([type=hidden], [type=radio], [type=checkbox]), textarea, .choice label, .symptom label")]
                  .filter(each => !each.matches(".past-head") && !isInSentence(each) && each.getClientRects().length > 0 && each.getBoundingClientRect().height < 44)
                  .map(each => each.outerHTML.slice(0, 120));
                }
                """);
            Assert.True(small.Length == 0, $"{name}: {string.Join("; ", small)}");
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_page_never_breaks_its_own_policy()
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, "/");
        var said = new List<string>();
        var at = "front";
        page.Console += (_, message) => said.Add($"{at}: {message.Type}: {message.Text}");
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            at = name;
            await page.GotoAsync(address);
        }

        Assert.True(said.All(line => line.Contains("404", StringComparison.Ordinal)), string.Join("; ", said));
        await page.Context.CloseAsync();
    }
}
