using System.Diagnostics;

namespace Proveout.Cli.Tests;

/// <summary>What only a process of its own shows: streams, signals, ports.</summary>
public sealed class ProcessTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task The_bench_is_served_at_the_address_on_the_first_line_until_Ctrl_C()
    {
        using var program = ProgramProcess.Start("serve", "--journal", folder.At("served.db"));
        var line = await program.Output.ReadLineAsync();

        using var client = new HttpClient();
        var page = await client.GetStringAsync(new Uri(line!["Bench: ".Length..]));
        program.Interrupt();

        Assert.Matches(@"^Bench: http://127\.0\.0\.1:\d+/$", line);
        Assert.Contains("Pennywort", page, StringComparison.Ordinal);
        Assert.Equal(130, await program.ExitAsync());
        Assert.Equal("", await program.Error.ReadToEndAsync());
    }

    [Fact]
    public async Task The_served_bench_hands_out_the_report_of_a_build_as_a_PDF()
    {
        await Run.WithInputAsync("quit\n", "bench", "pennywort", "--serial", "R-1", "--builder", "Mara Lindt", "--journal", folder.At("report.db"));
        using var program = ProgramProcess.Start("serve", "pennywort", "--journal", folder.At("report.db"));
        var address = new Uri((await program.Output.ReadLineAsync())!["Bench: ".Length..]);

        using var client = new HttpClient();
        var front = await client.GetStringAsync(address);
        var build = System.Text.RegularExpressions.Regex.Match(front, "builds/[0-9a-f-]{36}").Value;
        var report = await client.GetByteArrayAsync(new Uri(address, $"{build}/report.pdf"));

        Assert.StartsWith("%PDF-", System.Text.Encoding.ASCII.GetString(report, 0, 8), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_refused_in_a_sentence()
    {
        using var listener = new System.Net.Sockets.TcpListener(System.Net.IPAddress.Loopback, 0);
        listener.Start();
        var port = ((System.Net.IPEndPoint)listener.LocalEndpoint).Port;

        var run = await Run.OfAsync("serve", "pennywort", "--port", $"{port}", "--journal", folder.At("refused.db"));

        Assert.Equal(2, run.Exit);
        Assert.Contains($"port {port}", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ctrl_C_at_the_bench_keeps_what_was_entered()
    {
        using var program = ProgramProcess.Start("bench", "pennywort", "--serial", "C-1", "--builder", "Mara Lindt", "--journal", folder.At("bench.db"));
        while (await program.Output.ReadLineAsync() is { } line && !line.StartsWith("Check 1 of", StringComparison.Ordinal))
            continue;

        program.Interrupt();

        Assert.Equal(130, await program.ExitAsync());
        Assert.Equal(0, (await Run.OfAsync("verify", "C-1", "--journal", folder.At("bench.db"))).Exit);
    }

    [Fact]
    public async Task A_reader_that_goes_away_is_no_trouble()
    {
        using var shell = Process.Start(new ProcessStartInfo("bash", ["-c", $"set -o pipefail; dotnet '{ProgramProcess.Assembly}' plan pennywort --json --network --greedy | head -c 1"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var output = await shell.StandardOutput.ReadToEndAsync();
        var error = await shell.StandardError.ReadToEndAsync();
        await shell.WaitForExitAsync();

        Assert.Equal(("{", "", 0), (output, error.Replace("Simulating every plausible mistake of Pennywort and choosing the checks ...\n", "", StringComparison.Ordinal), shell.ExitCode));
    }
}
