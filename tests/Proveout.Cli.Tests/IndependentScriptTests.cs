using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Proveout.Cli.Tests;

/// <summary>
/// Runs tests/independent/recompute.py, which shares no code and no language with Proveout: it counts the plan's claim anew from the JSON, draws
/// machines inside their tolerances and measures them with NumPy and SciPy. <c>./test</c> installs these and names the interpreter in
/// <c>PROVEOUT_PYTHON</c>.
/// </summary>
public sealed partial class IndependentScriptTests(TemporaryFolder folder) : IClassFixture<TemporaryFolder>
{
    [Fact]
    public async Task The_claim_of_a_plan_and_its_intervals_hold_for_software_of_others()
    {
        if (Environment.GetEnvironmentVariable("PROVEOUT_PYTHON") is not { Length: > 0 } python)
        {
            Assert.Skip("PROVEOUT_PYTHON does not name a Python 3 with NumPy and SciPy: the plan was NOT recomputed by software of others. `./test` sees to it.");
            return;
        }

        var plan = folder.At("plan.json");
        await File.WriteAllTextAsync(plan, (await Run.OfAsync("plan", "pennywort", "--json", "--network")).Output, TestContext.Current.CancellationToken);
        var script = Path.Combine(AppContext.BaseDirectory, "recompute.py");
        using var process = Process.Start(new ProcessStartInfo(python, [script, plan, "--every", "11", "--draws", "2"]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var complaints = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.True(process.ExitCode == 0, output + await complaints);
        Assert.InRange(int.Parse(Held().Match(output).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 500, int.MaxValue);
    }

    [GeneratedRegex(@"(\d+) held, 0 broken\s*$")]
    private static partial Regex Held();
}
