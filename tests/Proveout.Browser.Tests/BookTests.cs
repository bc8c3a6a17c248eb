using Microsoft.Playwright;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Browser.Tests;

/// <summary>A published book opened as from a memory stick: by file, without a server.</summary>
public sealed class BookTests(BrowserFixture browser) : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-book-");

    public async ValueTask InitializeAsync()
    {
        await using var samples = await SampleBench.OpenAsync();
        foreach (var file in samples.Desks.Books.OfMachine(SampleBench.Machine, BookRequest.Plain)!.Value!.Files)
        {
            var path = Path.Combine(_folder.FullName, file.Name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllBytesAsync(path, file.Bytes);
        }
    }

    public ValueTask DisposeAsync()
    {
        _folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    [Theory]
    [InlineData(ColorScheme.Light, 390, 844)]
    [InlineData(ColorScheme.Dark, 390, 844)]
    [InlineData(ColorScheme.Light, 1280, 900)]
    [InlineData(ColorScheme.Dark, 1280, 900)]
    public async Task No_page_breaks_a_rule_scrolls_sideways_or_asks_for_anything_elsewhere(ColorScheme scheme, int width, int height)
    {
        var page = await OpenAsync(scheme, width, height, scripts: true);
        List<string> broken = [];
        List<string> elsewhere = [];
        page.Request += (_, request) => elsewhere.AddRange(request.Url.StartsWith("file:", StringComparison.Ordinal) ? [] : [request.Url]);
        foreach (var file in _folder.EnumerateFiles("*.html").OrderBy(file => file.Name, StringComparer.Ordinal))
        {
            await page.GotoAsync(AddressOf(file.Name));
            broken.AddRange((await PageRules.BrokenAsync(page, scheme)).Select(rule => $"{file.Name}: {rule}"));
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), file.Name);
        }

        Assert.Empty(broken);
        Assert.Empty(elsewhere);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_search_finds_a_part_and_leads_to_it()
    {
        var page = await OpenAsync(ColorScheme.Light, 390, 844, scripts: true);
        await page.GotoAsync(AddressOf("search.html"));
        await page.GetByRole(AriaRole.Searchbox).FillAsync("emerg stop");
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("places.");
        await page.GetByRole(AriaRole.Link, new() { Name = "Parts and receiving check", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Parts and receiving check");
        await page.GotoAsync(AddressOf("search.html"));
        await page.GetByRole(AriaRole.Searchbox).FillAsync("nosuchword");
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToHaveTextAsync("No place holds all of these words.");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Without_script_the_search_leads_to_the_index_and_the_index_to_the_part()
    {
        var page = await OpenAsync(ColorScheme.Light, 390, 844, scripts: false);
        await page.GotoAsync(AddressOf("search.html"));
        await page.GetByRole(AriaRole.Main).GetByRole(AriaRole.Link, new() { Name = "A to Z" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "K1, ", Exact = false }).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Parts and receiving check");
        await page.Context.CloseAsync();
    }

    private string AddressOf(string name) => new Uri(Path.Combine(_folder.FullName, name)).AbsoluteUri;

    private async Task<IPage> OpenAsync(ColorScheme scheme, int width, int height, bool scripts)
    {
        var context = await browser.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, JavaScriptEnabled = scripts, ColorScheme = scheme });
        context.SetDefaultTimeout(10_000);
        return await context.NewPageAsync();
    }
}
