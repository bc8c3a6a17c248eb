using Deque.AxeCore.Playwright;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Proveout.Web;
using Proveout.Web.Tests.Access;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>The pages of the way in, on a bench that asks who comes.</summary>
public sealed class AccessPageTests(BrowserFixture browser)
{
    private const string Password = "seven herons wade upstream";

    [Theory]
    [InlineData(ColorScheme.Light, 390)]
    [InlineData(ColorScheme.Dark, 390)]
    [InlineData(ColorScheme.Light, 195)]
    [InlineData(ColorScheme.Dark, 1280)]
    public async Task The_way_in_and_what_comes_after_it_breaks_no_rule_and_does_not_scroll_sideways(ColorScheme scheme, int width)
    {
        var folder = Directory.CreateTempSubdirectory("proveout-way-in-").FullName;
        await using var samples = await SampleBench.OpenAsync();
        await using var app = await StartAsync(samples, folder);
        await using var context = await browser.Browser.NewContextAsync(new() { BaseURL = app.Urls.First(), ViewportSize = new() { Width = width, Height = 844 }, ColorScheme = scheme });
        var page = await context.NewPageAsync();
        await page.GotoAsync("/join");
        await IsSoundAsync(page, width);
        await page.GotoAsync("/");
        await IsSoundAsync(page, width);
        await SignInAsync(page, "wrong");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Name and password do not fit together.");
        await IsSoundAsync(page, width);
        await SignInAsync(page, Password);
        await Assertions.Expect(page.GetByText("Builds in work")).ToBeVisibleAsync();
        await IsSoundAsync(page, width);
        await page.GotoAsync("/devices");
        await IsSoundAsync(page, width);
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Not for your role" })).ToBeVisibleAsync();
        await IsSoundAsync(page, width);
        await app.StopAsync();
        Directory.Delete(folder, recursive: true);
    }

    private static async Task SignInAsync(IPage page, string password)
    {
        await page.GetByLabel("Your name").FillAsync("Tove Lund");
        await page.GetByLabel("Password").FillAsync(password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
    }

    private static async Task<WebApplication> StartAsync(SampleBench samples, string folder)
    {
        var store = new AccessStore(Path.Combine(folder, "builds.db.access"));
        Assert.NotNull(new PeopleDesk(store, new OwnClock()).Add("Tove Lund", AccessRole.Checker, Password).Value);
        var app = BenchHost.Build(new BenchHostOptions { Opening = new NetworkOpening(store, []) { Clock = new OwnClock() } }, samples.Desks);
        await app.StartAsync();
        return app;
    }

    private static async Task IsSoundAsync(IPage page, int width)
    {
        var result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, $"{page.Url}: {string.Join("; ", result.Violations.Select(item => $"{item.Id}: {item.Help}"))}");
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{page.Url} scrolls sideways.");
    }
}
