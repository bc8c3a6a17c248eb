using System.Diagnostics;

namespace Proveout.Benchmarks;

/// <summary>Processor time of this process, all threads together: says the same on a busy machine as on a quiet one.</summary>
internal static class ProcessorTime
{
    /// <summary>Processor and elapsed seconds of one turn, averaged over several.</summary>
    public static (double Processor, double Elapsed) Of(int turns, Action turn)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        for (var index = 0; index < turns; index++)
            turn();
        var elapsed = watch.Elapsed;
        process.Refresh();
        return ((process.TotalProcessorTime - before).TotalSeconds / turns, elapsed.TotalSeconds / turns);
    }
}
