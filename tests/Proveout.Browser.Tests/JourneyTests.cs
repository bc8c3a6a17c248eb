using Microsoft.Playwright;
using Proveout.Web.Tests.Samples;

namespace Proveout.Browser.Tests;

public sealed class JourneyTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_builder_goes_from_the_front_page_to_a_signed_record(bool scripts)
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/", scripts: scripts);
        await page.GetByRole(AriaRole.Radio, new() { Name = "Pennywort" }).CheckAsync();
        await page.GetByLabel("Serial number").FillAsync("oven-8");
        await page.GetByLabel("Who builds it?").FillAsync("Ida Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Start" }).ClickAsync();

        var build = (await site.Bench.BuildsAsync(default)).Single(each => each.Serial == "oven-8");
        for (var number = 1; number <= 5; number++)
        {
            var state = await site.Bench.StateAsync(build.Id, default);
            await EnterAsync(page, Typed.Good(state!.FindStep(state.CurrentCheckId!)!));
            await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Pass");
            await page.GetByRole(AriaRole.Link, new() { Name = "Next check" }).ClickAsync();
        }

        await page.GetByText("Skip with a reason").ClickAsync();
        await page.GetByLabel("Why is it left out?").FillAsync("The sensor comes tomorrow.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Skip this check" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Left out: The sensor comes tomorrow.")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Record" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign" }).ClickAsync();
        await Assertions.Expect(page.Locator("#sign-off")).ToContainTextAsync("Ida Brandt, builder: I took the readings above");
        await page.Context.CloseAsync();
    }

    // Issue 7: from the front page to the first judged reading in at most five actions; an action is a tap, or a text typed into a field.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_sample_gives_its_first_judged_reading_in_five_actions(bool scripts)
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/", scripts: scripts);
        var actions = 0;
        await Counted(page.GetByRole(AriaRole.Radio, new() { Name = "Pennywort" }).CheckAsync());
        await Counted(page.GetByLabel("Who builds it?").FillAsync("Ida Brandt"));
        await Counted(page.GetByRole(AriaRole.Button, new() { Name = "Start" }).ClickAsync());
        var build = (await site.Bench.BuildsAsync(default)).Single(each => each.Builder == "Ida Brandt");
        var state = (await site.Bench.StateAsync(build.Id, default))!;
        await Counted(page.GetByLabel("What does it read?").FillAsync(Typed.Good(state.FindStep(state.CurrentCheckId!)!)));
        await Counted(page.Keyboard.PressAsync("Enter"));
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Pass");
        Assert.InRange(actions, 1, 5);
        await page.Context.CloseAsync();

        Task Counted(Task action)
        {
            actions++;
            return action;
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_machine_is_described_its_guesses_confirmed_and_a_build_of_it_begun(bool scripts)
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/", scripts: scripts);
        await page.GetByRole(AriaRole.Link, new() { Name = "Describe your machine" }).ClickAsync();
        await page.GetByLabel("What do you call your machine?").FillAsync("River bench");
        await page.GetByLabel("Mains in the machine").SelectOptionAsync("none");
        await page.GetByLabel("Controller board").SelectOptionAsync("four");
        await page.GetByLabel("Who are you?").FillAsync("Ida Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the machine" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("What was guessed");
        var before = await page.GetByRole(AriaRole.Checkbox).CountAsync();
        await page.GetByRole(AriaRole.Checkbox).First.CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What is ticked is so" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Checkbox)).ToHaveCountAsync(before - 1);
        await page.GetByRole(AriaRole.Link, new() { Name = "Start a build of River bench" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Radio, new() { Name = "River bench" })).ToBeCheckedAsync();
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_fail_leads_over_its_suspects_to_the_next_best_check(bool scripts)
    {
        await using var site = await BenchSite.StartAsync();
        var step = await site.StepAsync(1);
        var page = await site.OpenAsync(browser, site.Check(step), scripts: scripts);
        await EnterAsync(page, Typed.Bad(step));
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Fail");
        var state = await site.StateAsync();
        await Assertions.Expect(page.Locator(".suspects > li").First).ToContainTextAsync(state.Suspects[0].Sentence);
        await page.GetByRole(AriaRole.Link, new() { Name = "Next best check" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync($"{site.Address}/builds/{site.Build.Id}/checks/{state.NextBestCheckId}");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Caution" })).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_form_that_was_taken_leaves_no_word_of_a_refusal_in_the_address()
    {
        await using var site = await BenchSite.StartAsync();
        var step = await site.StepAsync(1);
        var page = await site.OpenAsync(browser, site.Check(step), scripts: false);
        await EnterAsync(page, "three");
        await Assertions.Expect(page).ToHaveURLAsync($"{site.Address}{site.Check(step)}#problems-reading");
        await EnterAsync(page, Typed.Good(step));
        await Assertions.Expect(page).ToHaveURLAsync($"{site.Address}{site.Check(step)}#");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_keyboard_alone_enters_a_reading_and_goes_on()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(1)), 1280, 900);
        await Assertions.Expect(page.GetByLabel("What does it read?")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync(Typed.Good(await site.StepAsync(1)));
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Next check" })).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page).ToHaveURLAsync($"{site.Address}{site.Check(await site.StepAsync(2))}");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_keyboard_alone_opens_a_fold_and_skips()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(1)), 1280, 900);
        for (var presses = 0; presses < 20 && !await IsFocusedAsync(page, "Skip with a reason"); presses++)
            await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("Painted.");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByText("Left out: Painted.")).ToBeVisibleAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_caution_is_in_sight_when_a_check_opens()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(1)), 1280, 900);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Caution" })).ToBeInViewportAsync();
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Without_scripts_a_refused_reading_comes_back_with_its_problem_in_sight()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(1)), scripts: false);
        await EnterAsync(page, "three");
        await Assertions.Expect(page.GetByText("`three` is not a reading.")).ToBeInViewportAsync();
        await Assertions.Expect(page.GetByLabel("What does it read?")).ToHaveValueAsync("three");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_photograph_is_taken_in()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, site.Check(await site.StepAsync(1)));
        var picture = await page.PictureAsync();
        await page.GetByText("Attach a photograph").ClickAsync();
        await page.GetByLabel("What does it show?").FillAsync("The bond");
        await page.GetByLabel("Photograph", new() { Exact = true }).SetInputFilesAsync(new FilePayload { Name = "bond.png", MimeType = "image/png", Buffer = picture });
        await page.GetByRole(AriaRole.Button, new() { Name = "Attach it" }).ClickAsync();
        await Assertions.Expect(page.GetByAltText("Photograph: The bond")).ToBeVisibleAsync();
        Assert.NotNull((await site.StateAsync()).Deviations[0].PhotoSha256);
        await page.Context.CloseAsync();
    }

    private static async Task EnterAsync(IPage page, string reading)
    {
        await page.GetByLabel("What does it read?").FillAsync(reading);
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter", Exact = true }).ClickAsync();
    }

    private static Task<bool> IsFocusedAsync(IPage page, string text) =>
        page.EvaluateAsync<bool>("text => document.activeElement.textContent.trim() === text", text);
}
