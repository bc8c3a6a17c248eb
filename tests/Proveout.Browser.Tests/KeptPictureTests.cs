using System.Globalization;

namespace Proveout.Browser.Tests;

/// <summary>
/// The first screen of every page looks as a person saw it last (tests/cases/pictures). After a change that is meant, look at the pages, then run these tests
/// with PROVEOUT_KEEP_PICTURES=1, which keeps the new ones.
/// </summary>
public sealed class KeptPictureTests(BrowserFixture browser)
{
    private const int Width = 390;
    private const int Height = 844;

    // Times, identifiers and versions differ from run to run; a heading that moved by a line changes far more.
    private const double MostDifferent = 0.02;

    private static readonly string Folder = Path.Combine(RepositoryRoot(), "tests", "cases", "pictures");

    [Fact]
    public async Task The_first_screen_of_every_page_looks_as_it_did_when_a_person_looked_at_it()
    {
        var keeps = Environment.GetEnvironmentVariable("PROVEOUT_KEEP_PICTURES") == "1";
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var letters = await LettersAsync(site);
        var lettersFile = Path.Combine(Folder, "letters.txt");
        if (keeps)
            await File.WriteAllTextAsync(lettersFile, letters);
        // With other letters every line breaks elsewhere, and that says nothing about the pages.
        if (letters != await File.ReadAllTextAsync(lettersFile))
            Assert.Skip("This computer draws pages with other letters than those that the pictures were kept with (fonts-dejavu-core), so they cannot be compared.");
        List<string> changed = [];
        var page = await site.OpenAsync(browser, "/", Width, Height);
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            await page.GotoAsync(address);
            var now = CoarsePicture.Of(await page.PictureAsync(), Height);
            var file = Path.Combine(Folder, $"{name}.txt");
            if (keeps)
                await File.WriteAllTextAsync(file, now);
            else if (!File.Exists(file))
                changed.Add($"{name} has no picture");
            else if (CoarsePicture.Difference(now, await File.ReadAllTextAsync(file)) is > MostDifferent and var share)
                changed.Add(string.Create(CultureInfo.InvariantCulture, $"{name} differs in {share:0.0%} of its squares"));
        }

        Assert.True(changed.Count == 0, string.Join("; ", changed));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_page_whose_content_has_moved_by_one_line_differs_from_its_kept_picture()
    {
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, "/frame", Width, Height);
        var before = CoarsePicture.Of(await page.PictureAsync(), Height);
        await page.EvaluateAsync("() => { document.querySelector('main').prepend(document.createElement('br')); }");
        var after = CoarsePicture.Of(await page.PictureAsync(), Height);
        await page.Context.CloseAsync();

        Assert.True(CoarsePicture.Difference(before, after) > 5 * MostDifferent);
    }

    private async Task<string> LettersAsync(BenchSite site)
    {
        var page = await site.OpenAsync(browser, "/offline", Width, Height);
        var width = await page.EvaluateAsync<double>("() => { const pen = document.createElement('canvas').getContext('2d'); pen.font = `100px ${getComputedStyle(document.body).fontFamily}`; return pen.measureText('Prove dead before you touch: 0.66 Ω or less').width; }");
        await page.Context.CloseAsync();
        return string.Create(CultureInfo.InvariantCulture, $"{width:0}\n");
    }

    private static string RepositoryRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Proveout.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run inside the repository.");
        return folder;
    }
}
