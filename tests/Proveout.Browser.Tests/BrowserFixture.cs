using Microsoft.Playwright;
using Proveout.Browser.Tests;

[assembly: AssemblyFixture(typeof(BrowserFixture))]

namespace Proveout.Browser.Tests;

/// <summary>One real browser for all tests: the chromium of this computer, never one that is fetched.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public IBrowser Browser => _browser ?? throw new InvalidOperationException("The browser is not started.");

    public async ValueTask InitializeAsync()
    {
        var path = Environment.GetEnvironmentVariable("PROVEOUT_CHROMIUM") ?? "/usr/bin/chromium";
        if (!File.Exists(path))
            throw new InvalidOperationException($"The browser tests need chromium at {path}. Install it, or name its place in PROVEOUT_CHROMIUM.");
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = path,
            Headless = true,
            Args = ["--no-sandbox", "--headless=new", "--disable-gpu", "--no-proxy-server"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
    }
}
