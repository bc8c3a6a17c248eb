using System.Diagnostics;
using System.Globalization;
using System.Text;
using Proveout.Engine.Motion;

namespace Proveout.Benchmarks;

/// <summary>Prints how long ten million rows of three accelerations take to read and average, against NumPy and SciPy on the same file in the same run.</summary>
internal static class ResonanceComparison
{
    private const int DefaultRows = 10_000_000;
    private const double Rate = 3200;
    private const int Segment = 8192;

    private const string Rival = """
        import sys, time, resource, numpy, scipy.signal
        started, used = time.perf_counter(), time.process_time()
        table = numpy.loadtxt(sys.argv[1], delimiter=",", skiprows=1)
        rate = (len(table) - 1) / (table[-1, 0] - table[0, 0])
        peaks = []
        for column in (1, 2, 3):
            frequency, density = scipy.signal.welch(table[:, column], fs=rate, nperseg=int(sys.argv[2]))
            peaks.append(density.max())
        print(time.perf_counter() - started, time.process_time() - used, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024, *(f"{peak:.17g}" for peak in peaks))
        """;

    public static void Print(TextWriter output, string[] more)
    {
        var rows = more.Length > 0 ? int.Parse(more[0], CultureInfo.InvariantCulture) : DefaultRows;
        var path = Path.GetTempFileName();
        try
        {
            Write(path, rows);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{rows:N0} rows of time, x, y, z: {new FileInfo(path).Length / 1e6:0} MB; segments of {Segment}."));
            AccelerationRecord? record = null;
            var own = ProcessorTime.Of(1, () =>
            {
                using var stream = File.OpenRead(path);
                record = AccelerationReader.Read(stream, path, new SignalOptions(SegmentLength: Segment)).Value;
            });
            using var process = Process.GetCurrentProcess();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Proveout: {own.Elapsed:0.00} s elapsed, {own.Processor:0.00} s of processor time, {process.PeakWorkingSet64 / 1048576.0:0} MiB at most."));
            var python = Environment.GetEnvironmentVariable("PROVEOUT_PYTHON") is { Length: > 0 } named ? named : "/usr/bin/python3";
            var answer = Run(python, path).Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture)).ToArray();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"NumPy loadtxt and SciPy welch: {answer[0]:0.00} s elapsed, {answer[1]:0.00} s of processor time, {answer[2]:0} MiB at most."));
            var off = record!.Directions.Zip(answer[3..], (direction, peak) => Math.Abs((direction.Spectrum.Values.Max() / peak) - 1)).Max();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Ratio of processor time {own.Processor / answer[1]:0.00}, of elapsed {own.Elapsed / answer[0]:0.00}; the highest densities differ by {off:0.0e+0} at most."));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static void Write(string path, int rows)
    {
        var random = new Random(1);
        using var writer = new StreamWriter(path, append: false, Encoding.ASCII, 1 << 20);
        writer.Write("time [s],x [m/s2],y [m/s2],z [m/s2]\n");
        for (var row = 0; row < rows; row++)
        {
            var turn = 2 * Math.PI * row / Rate;
            writer.Write(string.Create(CultureInfo.InvariantCulture, $"{row / Rate:0.000000},{Math.Sin(47 * turn) + random.NextDouble():0.0000},{Math.Sin(62 * turn) + random.NextDouble():0.0000},{9.81 + (0.2 * random.NextDouble()):0.0000}\n"));
        }
    }

    private static string Run(string python, string path)
    {
        using var process = Process.Start(new ProcessStartInfo(python, ["-c", Rival, path, Segment.ToString(CultureInfo.InvariantCulture)]) { RedirectStandardOutput = true })!;
        var answer = process.StandardOutput.ReadToEnd().Trim();
        process.WaitForExit();
        return answer;
    }
}
