using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>Takes a picture of every page; keeps them in the folder that PROVEOUT_PICTURES names, for a person to look at.</summary>
public sealed class PictureTests(BrowserFixture browser)
{
    // An empty sheet of the larger size compresses to less.
    private const int BytesOfAnEmptySheet = 8_000;

    [Theory]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Dark)]
    [InlineData(1280, 900, ColorScheme.Light)]
    public async Task Every_page_shows_more_than_an_empty_sheet(int width, int height, ColorScheme scheme)
    {
        var folder = Environment.GetEnvironmentVariable("PROVEOUT_PICTURES");
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        var page = await site.OpenAsync(browser, "/", width, height, scheme: scheme);
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            await page.GotoAsync(address);
            var picture = await page.PictureAsync(new() { FullPage = !string.IsNullOrEmpty(folder) });
            Assert.True(picture.Length > BytesOfAnEmptySheet, $"{name} is empty at {width} px, {scheme}.");
            if (!string.IsNullOrEmpty(folder))
                await File.WriteAllBytesAsync(Path.Combine(folder, $"{name}-{width}-{scheme}.png"), picture);
        }

        await page.Context.CloseAsync();
    }
}
