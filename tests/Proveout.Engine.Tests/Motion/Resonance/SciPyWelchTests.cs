using System.Diagnostics;
using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

/// <summary>The same file read and averaged by NumPy and SciPy. <c>./test</c> names the interpreter in <c>PROVEOUT_PYTHON</c>.</summary>
public sealed class SciPyWelchTests
{
    private const string Script = """
        import sys, numpy, scipy.signal
        table = numpy.loadtxt(sys.argv[1], delimiter=";", skiprows=1)
        rate = (len(table) - 1) / (table[-1, 0] - table[0, 0])
        for column in (1, 2):
            frequency, density = scipy.signal.welch(table[:, column], fs=rate, nperseg=int(sys.argv[2]))
            print(" ".join(f"{value:.17g}" for value in density))
        print(f"{rate:.17g} {frequency[1]:.17g}")
        """;

    [Theory]
    [InlineData(2048)]
    [InlineData(8192)]
    public async Task A_file_has_the_spectrum_that_SciPy_computes_of_it(int segment)
    {
        if (Environment.GetEnvironmentVariable("PROVEOUT_PYTHON") is not { Length: > 0 } python)
        {
            Assert.Skip("PROVEOUT_PYTHON does not name a Python 3 with NumPy and SciPy: the spectrum was NOT computed by software of others. `./test` sees to it.");
            return;
        }

        var shake = new SyntheticShake(3200, 30, (47, 0.06, 1), (81, 0.03, 0.4));
        var samples = shake.UnderNoise();
        var text = SyntheticShake.Text("time [s];x [m/s²];y [m/s²]", samples.Select((sample, index) => string.Create(CultureInfo.InvariantCulture, $"{index / 3200.0:0.0000000};{sample:0.000000};{9.81 + samples[^(index + 1)]:0.000000}")));
        var path = Path.GetTempFileName();
        try
        {
            await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
            var record = SyntheticShake.Read(text, new SignalOptions(SegmentLength: segment));
            var rows = await RunAsync(python, path, segment);
            Assert.Equal(rows[2][0], record.RateHertz, 1e-9 * record.RateHertz);
            foreach (var (direction, expected) in record.Directions.Zip(rows))
            {
                Assert.Equal(rows[2][1], direction.Spectrum.BinHertz, 1e-12 * 1e3);
                Assert.Equal(expected.Length, direction.Spectrum.Values.Count);
                Assert.All(expected.Zip(direction.Spectrum.Values), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * pair.First));
            }
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static async Task<double[][]> RunAsync(string python, string path, int segment)
    {
        using var process = Process.Start(new ProcessStartInfo(python, ["-c", Script, path, segment.ToString(CultureInfo.InvariantCulture)]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var complaints = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await complaints);
        return [.. output.Trim().Split('\n').Select(line => line.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray())];
    }
}
