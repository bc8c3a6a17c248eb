using Microsoft.Playwright;
using Proveout.Web.Tests.Samples;

namespace Proveout.Browser.Tests;

public sealed class HandsFreeTests(BrowserFixture browser)
{
    // Headless chromium has no screen to keep on and no voice, so what the page asks of them is written down.
    private const string Listening = """
        window.asked = [];
        Object.defineProperty(navigator, "wakeLock", { value: { request: async (kind) => { window.asked.push(kind); return { released: false }; } } });
        window.spoken = [];
        speechSynthesis.speak = (utterance) => window.spoken.push(utterance.text);
        """;

    [Fact]
    public async Task The_screen_stays_on_at_a_check_and_nowhere_else()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAsync(site);
        Assert.Equal(["screen"], await page.EvaluateAsync<string[]>("asked"));
        await page.GotoAsync($"/builds/{site.Build.Id}/checks");
        Assert.Empty(await page.EvaluateAsync<string[]>("asked"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_step_is_read_out_with_its_cautions_first()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAsync(site);
        Assert.Empty(await page.EvaluateAsync<string[]>("spoken"));
        await page.GetByText("Hands-free").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Read this step out" }).ClickAsync();
        var step = await site.StepAsync(1);
        var spoken = await page.EvaluateAsync<string[]>("spoken");
        Assert.Equal(step.SetUp.Cautions, spoken.Take(step.SetUp.Cautions.Count));
        Assert.Contains(step.Check.Title, spoken);
        Assert.Contains(spoken, text => text.StartsWith("Should read", StringComparison.Ordinal) || text == step.Expected.Replace("Ω", "ohm", StringComparison.Ordinal));

        await page.GetByLabel("Read every step out when it opens").CheckAsync();
        await page.ReloadAsync();
        Assert.NotEmpty(await page.EvaluateAsync<string[]>("spoken"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_keypad_and_a_foot_switch_work_without_focus_once_they_are_switched_on()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAsync(site);
        await page.EvaluateAsync("document.activeElement.blur()");
        await page.Keyboard.TypeAsync("0");
        await Assertions.Expect(page.GetByLabel("What does it read?")).ToHaveValueAsync("");
        await page.GetByText("Hands-free").ClickAsync();
        await page.GetByLabel("Foot switch or keypad works anywhere").CheckAsync();
        await page.EvaluateAsync("document.activeElement.blur()");
        await page.Keyboard.TypeAsync(Typed.Good(await site.StepAsync(1)));
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Pass");
        await page.Keyboard.PressAsync("PageDown");
        await Assertions.Expect(page).ToHaveURLAsync($"{site.Address}{site.Check(await site.StepAsync(2))}");
        await page.Keyboard.PressAsync("PageUp");
        await Assertions.Expect(page).ToHaveURLAsync($"{site.Address}{site.Check(await site.StepAsync(1))}");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Listening_is_off_until_it_is_switched_on()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await OpenAsync(site);
        await page.GetByText("Hands-free").ClickAsync();
        await Assertions.Expect(page.GetByText("some browsers send what the microphone hears")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Listen now" })).ToBeHiddenAsync();
        await page.Context.CloseAsync();
    }

    private async Task<IPage> OpenAsync(BenchSite site)
    {
        var page = await site.OpenAsync(browser, "/");
        await page.AddInitScriptAsync(Listening);
        await page.GotoAsync(site.Check(await site.StepAsync(1)));
        return page;
    }
}
