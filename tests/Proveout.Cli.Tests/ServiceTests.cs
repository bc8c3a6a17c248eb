using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Proveout.Cli.Tests;

/// <summary>The bench left to run: stopped by a signal, asked how it is, and what it logs.</summary>
public sealed class ServiceTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task A_request_under_way_when_it_is_told_to_stop_is_answered_and_kept_and_event_streams_end()
    {
        var journal = folder.At("stopped.db");
        await Run.WithInputAsync("quit\n", "bench", "pennywort", "--serial", "S-1", "--builder", "Ada", "--journal", journal);
        using var program = ProgramProcess.Start("serve", "pennywort", "--journal", journal);
        var address = await AddressAsync(program);
        using var client = new HttpClient();
        var front = await client.GetAsync(address);
        var html = await front.Content.ReadAsStringAsync();
        await using var events = await client.GetStreamAsync(new Uri(address, $"{Regex.Match(html, "builds/[0-9a-f-]{36}").Value}/events?after=0"));
        using var stream = new StreamReader(events);
        await stream.ReadLineAsync();

        var body = Form(html, "start", ("serial", "S-2"), ("builder", "Ada"));
        using var half = new TcpClient();
        await half.ConnectAsync("127.0.0.1", address.Port);
        await half.GetStream().WriteAsync(Encoding.ASCII.GetBytes(
            $"POST / HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\nCookie: {front.Headers.GetValues("Set-Cookie").Single().Split(';')[0]}\r\n"
            + $"Content-Type: application/x-www-form-urlencoded\r\nExpect: 100-continue\r\nContent-Length: {body.Length}\r\n\r\n"));
        using var answer = new StreamReader(half.GetStream());
        // The server asks for the body: the request is under way for sure.
        Assert.Equal("HTTP/1.1 100 Continue", await answer.ReadLineAsync());
        await answer.ReadLineAsync();
        program.Terminate();
        // The event stream ends first, and only then is the other half sent.
        await stream.ReadToEndAsync();
        await half.GetStream().WriteAsync(Encoding.ASCII.GetBytes(body));

        Assert.Equal("HTTP/1.1 303 See Other", await answer.ReadLineAsync());
        Assert.Equal(0, await program.ExitAsync());
        Assert.Equal("", await program.Error.ReadToEndAsync());
        Assert.Equal(0, (await Run.OfAsync("verify", "S-2", "--journal", journal)).Exit);
    }

    [Fact]
    public async Task Who_tells_it_twice_does_not_wait()
    {
        using var program = ProgramProcess.Start("serve", "pennywort", "--journal", folder.At("twice.db"));
        var address = await AddressAsync(program);
        using var half = new TcpClient();
        await half.ConnectAsync("127.0.0.1", address.Port);
        await half.GetStream().WriteAsync("POST / HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-www-form-urlencoded\r\nExpect: 100-continue\r\nContent-Length: 9\r\n\r\n"u8.ToArray());
        using var answer = new StreamReader(half.GetStream());
        Assert.Equal("HTTP/1.1 100 Continue", await answer.ReadLineAsync());

        program.Interrupt();
        program.Interrupt();

        Assert.Equal(130, await program.ExitAsync());
    }

    [Fact]
    public async Task The_log_is_JSON_lines_without_addresses_builds_or_what_was_typed()
    {
        var journal = folder.At("logged.db");
        await Run.WithInputAsync("quit\n", "bench", "pennywort", "--serial", "L-1", "--builder", "Mara Lindt", "--journal", journal);
        using var program = ProgramProcess.Start("serve", "pennywort", "--journal", journal, "--log", "json");
        var address = await AddressAsync(program);
        using var client = new HttpClient();
        var build = Regex.Match(await client.GetStringAsync(address), "builds/[0-9a-f-]{36}").Value;
        await client.GetStringAsync(new Uri(address, $"{build}/record?code=4711"));
        await client.GetStringAsync(new Uri(address, "/health/ready"));
        await client.GetAsync(new Uri(address, "/nothing/4711"));
        program.Terminate();
        Assert.Equal(0, await program.ExitAsync());

        var text = await program.Error.ReadToEndAsync();
        var lines = text.TrimEnd().Split('\n').Select(line => JsonDocument.Parse(line).RootElement).ToArray();

        Assert.Equal(["Started", "Answered", "Answered", "Answered", "Stopping", "Stopped"], lines.Select(line => line.GetProperty("event").GetString()));
        Assert.Equal(["/", "/builds/{buildId}/record", "/{**address}"], lines[1..4].Select(line => line.GetProperty("route").GetString()));
        Assert.Equal([200, 200, 404], lines[1..4].Select(line => line.GetProperty("status").GetInt32()));
        Assert.All(["4711", "L-1", "Mara", build["builds/".Length..]], word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_served_bench_says_that_it_is_ready_and_measures_when_asked_to()
    {
        using var program = ProgramProcess.Start("serve", "pennywort", "--journal", folder.At("asked.db"), "--metrics");
        var address = await AddressAsync(program);
        using var client = new HttpClient();

        var words = await Run.OfAsync("health", "--port", $"{address.Port}");
        var json = await Run.OfAsync("health", "--port", $"{address.Port}", "--json");
        var metrics = await client.GetStringAsync(new Uri(address, "/metrics"));

        Assert.Equal((0, ""), (words.Exit, words.Error));
        Assert.StartsWith("The journal can be read.\nThe journal can be written.\n", words.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        using var health = JsonDocument.Parse(json.Output);
        Assert.True(health.RootElement.GetProperty("isReady").GetBoolean());
        Assert.Contains("dotnet_process_memory_working_set_bytes ", metrics, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bench_that_does_not_answer_is_not_ready()
    {
        using var listener = new TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        var port = ((System.Net.IPEndPoint)listener.LocalEndpoint).Port;
        listener.Stop();

        var run = await Run.OfAsync("health", "--port", $"{port}");

        Assert.Equal(1, run.Exit);
        Assert.Contains($"Nothing answers on port {port}", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_program_says_its_version()
    {
        var run = await Run.OfAsync("--version");

        Assert.Equal((0, Workshop.ProgramVersion.Number), (run.Exit, run.Output.Trim()));
    }

    private static async Task<Uri> AddressAsync(ProgramProcess program) => new((await program.Output.ReadLineAsync())!["Bench: ".Length..]);

    private static string Form(string html, string form, params (string Field, string Text)[] typed)
    {
        var start = html.IndexOf($"data-form=\"{form}\"", StringComparison.Ordinal);
        var part = html[start..html.IndexOf("</form>", start, StringComparison.Ordinal)];
        var hidden = Regex.Matches(part, "<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"").Select(field => (Field: field.Groups[1].Value, Text: field.Groups[2].Value));
        var machine = Regex.Match(part, "name=\"machine\"[^>]* value=\"([^\"]+)\"").Groups[1].Value;
        return string.Join('&', hidden.Concat(typed).Append(("machine", machine)).Select(field => $"{field.Item1}={Uri.EscapeDataString(field.Item2)}"));
    }
}
