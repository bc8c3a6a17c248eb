using Microsoft.Playwright;

namespace Proveout.Browser.Tests;

public sealed class MicrophoneTests(BrowserFixture browser)
{
    private const int Rate = 44_100;

    private static readonly LocatorAssertionsToContainTextOptions Recorded = new() { Timeout = 20_000 };

    [Fact]
    public async Task A_belt_that_the_microphone_hears_is_read_from_the_page()
    {
        var sound = Path.Combine(Path.GetTempPath(), $"proveout-belt-{Guid.NewGuid():N}.wav");
        await File.WriteAllBytesAsync(sound, Wav(110));
        try
        {
            await using var listening = await ListeningAsync(browser, sound);
            await using var site = await BenchSite.StartAsync();
            var page = await listening.NewPageAsync();
            await page.GotoAsync($"{site.Address}/tension");
            await page.GetByRole(AriaRole.Button, new() { Name = "Record 4 s with the microphone" }).First.ClickAsync();
            await Assertions.Expect(page.Locator("[data-record-news='tension-recording']")).ToContainTextAsync("Recorded.", Recorded);
            await page.GetByRole(AriaRole.Button, new() { Name = "What does it pull?" }).ClickAsync();
            await Assertions.Expect(page.Locator("main")).ToContainTextAsync("110.0", Recorded);
        }
        finally
        {
            File.Delete(sound);
        }
    }

    [Fact]
    public async Task Where_the_microphone_is_not_allowed_the_page_says_what_to_do()
    {
        await using var site = await BenchSite.StartAsync();
        var page = await site.OpenAsync(browser, "/tension");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record 4 s with the microphone" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("[data-record-news='tension-recording']")).ToContainTextAsync("choose a WAV file", new() { IgnoreCase = true, Timeout = 20_000 });
        await page.Context.CloseAsync();
    }

    // A browser of its own, whose microphone is a file.
    private static Task<IBrowser> ListeningAsync(BrowserFixture browser, string sound) => browser.Browser.BrowserType.LaunchAsync(new()
    {
        ExecutablePath = Environment.GetEnvironmentVariable("PROVEOUT_CHROMIUM") ?? "/usr/bin/chromium",
        Headless = true,
        Args =
        [
            "--no-sandbox", "--headless=new", "--disable-gpu", "--no-proxy-server", "--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream",
            $"--use-file-for-fake-audio-capture={sound}",
        ],
    });

    // A pluck every other second.
    private static byte[] Wav(double hertz)
    {
        byte[] samples = [.. Enumerable.Range(0, 2 * Rate)
            .Select(index => (index / (double)Rate) - 0.5)
            .Select(time => time < 0 ? 0 : Enumerable.Range(1, 4).Sum(number => 0.3 / number * Math.Exp(-time * (4 + number)) * Math.Sin(2 * Math.PI * number * hertz * time)))
            .SelectMany(sample => BitConverter.GetBytes((short)(32_000 * sample)))];
        return
        [
            .. "RIFF"u8, .. BitConverter.GetBytes(36 + samples.Length), .. "WAVEfmt "u8, .. BitConverter.GetBytes(16), 1, 0, 1, 0,
            .. BitConverter.GetBytes(Rate), .. BitConverter.GetBytes(2 * Rate), 2, 0, 16, 0, .. "data"u8, .. BitConverter.GetBytes(samples.Length), .. samples,
        ];
    }
}
