using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

/// <summary>Takes pictures of pages.</summary>
internal static class PageCamera
{
    // On a busy computer the browser says now and then, just after a page came, that it has nothing drawn yet. Whether that is the page's fault the second try tells.
    private const string NothingDrawn = "Unable to capture screenshot";

    /// <summary>A picture of a page as it is now.</summary>
    public static async Task<byte[]> PictureAsync(this IPage page, PageScreenshotOptions? options = null)
    {
        try
        {
            return await page.ScreenshotAsync(options);
        }
        catch (PlaywrightException exception) when (exception.Message.Contains(NothingDrawn, StringComparison.Ordinal))
        {
            return await page.ScreenshotAsync(options);
        }
    }
}
