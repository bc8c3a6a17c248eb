using System.Globalization;

namespace Proveout.Fuzz;

/// <summary>Reads one input and watches what it costs.</summary>
public static class Watch
{
    /// <summary>Longest time of a processor that an input may take. The clock on the wall would count the work of others.</summary>
    public static readonly TimeSpan LongestWork = TimeSpan.FromSeconds(1);

    /// <summary>What came of an input, and what is wrong with that; nothing when it was borne.</summary>
    public static (string Outcome, Finding? Finding) Read(FuzzTarget target, byte[] input)
    {
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(input);
        var (outcome, finding, work, allocated) = Once(target, input);
        if (finding is not null)
            return (outcome, finding);
        // The first reading compiles what it meets, and a collection may fall into any: slow is what is slow again.
        for (var again = 0; again < 2 && work > LongestWork; again++)
            work = Once(target, input).Work is var next && next < work ? next : work;
        if (work > LongestWork)
            return (outcome, new(target.Name, "slow", string.Create(CultureInfo.InvariantCulture, $"{work.TotalSeconds:0.0} s of a processor"), input));
        return allocated > target.MostAllocated && Once(target, input).Allocated > target.MostAllocated
            ? (outcome, new(target.Name, "large", string.Create(CultureInfo.InvariantCulture, $"{allocated >> 20} MiB allocated"), input))
            : (outcome, null);
    }

    private static (string Outcome, Finding? Finding, TimeSpan Work, long Allocated) Once(FuzzTarget target, byte[] input)
    {
        var (work, allocated) = (Environment.CpuUsage.TotalTime, GC.GetTotalAllocatedBytes());
        string outcome;
        Finding? finding = null;
        try
        {
            outcome = target.Read(input);
        }
#pragma warning disable CA1031 // Any exception is what is looked for here.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            (outcome, finding) = (exception.GetType().Name, Finding.Of(target.Name, exception, input));
        }

        return (outcome, finding, Environment.CpuUsage.TotalTime - work, GC.GetTotalAllocatedBytes() - allocated);
    }
}
