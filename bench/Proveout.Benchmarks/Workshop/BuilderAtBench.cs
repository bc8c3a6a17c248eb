using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Proveout.Benchmarks.Workshop;

/// <summary>A builder with a browser: goes to the next check, enters its reading, looks at the verdict, goes on.</summary>
internal sealed partial class BuilderAtBench : IDisposable
{
    private readonly HttpClient _browser;
    private readonly IReadOnlyDictionary<string, string> _readings;
    private string _build;

    /// <param name="server">Address of the server.</param>
    /// <param name="build">The build that is worked on.</param>
    /// <param name="readings">What the meter shows at each check.</param>
    public BuilderAtBench(Uri server, string build, IReadOnlyDictionary<string, string> readings)
    {
        _browser = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = server };
        (_build, _readings) = (build, readings);
    }

    /// <summary>Milliseconds of each request.</summary>
    public List<double> Requests { get; } = [];

    /// <summary>Milliseconds of those that entered a reading.</summary>
    public List<double> Entered { get; } = [];

    public void Forget()
    {
        Requests.Clear();
        Entered.Clear();
    }

    /// <summary>Takes up another build.</summary>
    public void TakeUp(string build) => _build = build;

    /// <summary>One check; false when the build has none left.</summary>
    public async Task<bool> EnterAsync()
    {
        using var way = await SendAsync(new HttpRequestMessage(HttpMethod.Get, $"/builds/{_build}"));
        var address = way.Headers.Location!.ToString();
        if (!address.Contains("/checks/", StringComparison.Ordinal))
            return false;
        using var page = await SendAsync(new HttpRequestMessage(HttpMethod.Get, address));
        var form = (await page.Content.ReadAsStringAsync()).Split("data-form=\"reading\"", 2)[^1];
        var check = Uri.UnescapeDataString(address.Split('/')[^1]);
        using var answer = await SendAsync(new HttpRequestMessage(HttpMethod.Post, address) { Content = new FormUrlEncodedContent(Fields(form, check)) });
        if ((int)answer.StatusCode != 303)
            throw new InvalidOperationException($"The reading of {check} was answered with {answer.StatusCode}: {await answer.Content.ReadAsStringAsync()}");
        Entered.Add(Requests[^1]);
        using var verdict = await SendAsync(new HttpRequestMessage(HttpMethod.Get, address));
        return true;
    }

    public void Dispose() => _browser.Dispose();

    private Dictionary<string, string> Fields(string form, string check) => new()
    {
        ["__RequestVerificationToken"] = Token().Match(form).Groups[1].Value,
        ["form"] = "reading",
        ["key"] = Key().Match(form).Groups[1].Value,
        ["text"] = _readings.GetValueOrDefault(check, "0.3"),
        ["person"] = "Ada Example",
    };

    private async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request)
    {
        using (request)
        {
            var watch = Stopwatch.StartNew();
            var answer = await _browser.SendAsync(request);
            Requests.Add(watch.Elapsed.TotalMilliseconds);
            return (int)answer.StatusCode < 400
                ? answer
                : throw new InvalidOperationException($"{request.Method} {request.RequestUri} was answered with {answer.StatusCode}: {await answer.Content.ReadAsStringAsync()}");
        }
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();

    [GeneratedRegex("name=\"key\" value=\"([^\"]+)\"")]
    private static partial Regex Key();
}
