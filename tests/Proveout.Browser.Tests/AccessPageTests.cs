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
        await IsSoundAsync(page, scheme, width);
        await page.GotoAsync("/");
        await IsSoundAsync(page, scheme, width);
        await SignInAsync(page, "wrong");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Name and password do not fit together.");
        await IsSoundAsync(page, scheme, width);
        await SignInAsync(page, Password);
        await Assertions.Expect(page.GetByText("Builds in work")).ToBeVisibleAsync();
        await IsSoundAsync(page, scheme, width);
        await page.GotoAsync("/devices");
        await IsSoundAsync(page, scheme, width);
        await page.GotoAsync("/second-factor");
        await IsSoundAsync(page, scheme, width);
        await page.GetByLabel("Your password again").FillAsync(Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a key" }).ClickAsync();
        var key = new OneTimeKey((await page.Locator(".secret-key").InnerTextAsync()).Replace(" ", "", StringComparison.Ordinal));
        await IsSoundAsync(page, scheme, width);
        await page.GetByLabel("Code", new() { Exact = true }).FillAsync("000000");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it on" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("This is not the code of now.");
        await IsSoundAsync(page, scheme, width);
        await page.GetByLabel("Code", new() { Exact = true }).FillAsync(OneTimeCodes.Of(key.Bytes(), OneTimeCodes.StepOf(new OwnClock().GetUtcNow())));
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it on" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Your ten codes on paper" })).ToBeVisibleAsync();
        await IsSoundAsync(page, scheme, width);
        await page.GetByRole(AriaRole.Link, new() { Name = "I have written them down" }).ClickAsync();
        await Assertions.Expect(page.GetByText("10 codes on paper are left.")).ToBeVisibleAsync();
        await IsSoundAsync(page, scheme, width);
        await page.GotoAsync("/sign-in");
        await IsSoundAsync(page, scheme, width);
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Not for your role" })).ToBeVisibleAsync();
        await IsSoundAsync(page, scheme, width);
        await app.StopAsync();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Who_signs_out_leaves_no_page_of_the_record_on_the_device_and_what_waits_to_be_recorded_stays()
    {
        var folder = Directory.CreateTempSubdirectory("proveout-way-out-").FullName;
        await using var samples = await SampleBench.OpenAsync();
        await using var app = await StartAsync(samples, folder);
        await using var context = await browser.Browser.NewContextAsync(new() { BaseURL = app.Urls.First() });
        var page = await context.NewPageAsync();
        await page.GotoAsync("/");
        await SignInAsync(page, Password);
        await Assertions.Expect(page.GetByText("Builds in work")).ToBeVisibleAsync();
        await page.EvaluateAsync("async () => { await navigator.serviceWorker.register('/worker.js'); await navigator.serviceWorker.ready; await (await caches.open('pages')).put('/builds/1/checks/2', new Response('a kept page')); }");
        var queue = await page.EvaluateAsync<string>("async () => (await (await fetch('/worker.js')).text()).match(/importScripts\\(\"([^\"]+)\"/)[1]");
        await page.AddScriptTagAsync(new() { Url = queue });
        await page.EvaluateAsync("() => waitingEntries.add({ address: '/builds/1/checks/2', fields: [], when: 0, state: 'refused', why: [] })");
        await page.GotoAsync("/devices");
        await page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null");

        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out here" }).ClickAsync();

        await page.WaitForURLAsync("**/sign-in**");
        await page.EvaluateAsync("async () => { while ((await (await caches.open('pages')).keys()).length > 0) await new Promise(later => setTimeout(later, 20)); }").WaitAsync(TimeSpan.FromSeconds(20));
        await page.AddScriptTagAsync(new() { Url = queue });
        Assert.Equal(1, await page.EvaluateAsync<int>("async () => (await waitingEntries.all()).length"));
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
        var store = new AccessFile(Path.Combine(folder, "builds.db.access"));
        Assert.NotNull(new PeopleDesk(store, new OwnClock()).Add("Tove Lund", AccessRole.Checker, Password).Value);
        var app = BenchHost.Build(new BenchHostOptions { Opening = new NetworkOpening(store, []) { Clock = new OwnClock() } }, samples.Desks);
        await app.StartAsync();
        return app;
    }

    private static async Task IsSoundAsync(IPage page, ColorScheme scheme, int width)
    {
        var broken = await PageRules.BrokenAsync(page, scheme);
        Assert.True(broken.Length == 0, $"{page.Url}: {string.Join("; ", broken)}");
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{page.Url} scrolls sideways.");
    }
}
