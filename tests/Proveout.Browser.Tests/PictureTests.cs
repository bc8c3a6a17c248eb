using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>Writes pictures of the pages into a folder named by PROVEOUT_PICTURES, for a person to look at.</summary>
public sealed class PictureTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Dark)]
    [InlineData(1280, 900, ColorScheme.Light)]
    public async Task Pages_are_pictured(int width, int height, ColorScheme scheme)
    {
        var folder = Environment.GetEnvironmentVariable("PROVEOUT_PICTURES");
        Assert.SkipWhen(string.IsNullOrEmpty(folder), "Set PROVEOUT_PICTURES to a folder to have pictures written.");
        await using var site = await BenchSite.StartAsync();
        await site.PrepareAsync();
        foreach (var (name, address) in await PageAddresses.AllAsync(site))
        {
            var page = await site.OpenAsync(browser, address, width, height, scheme: scheme);
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder!, $"{name}-{width}-{scheme}.png"), FullPage = true });
            await page.Context.CloseAsync();
        }
    }
}
