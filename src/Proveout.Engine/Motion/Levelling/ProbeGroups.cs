namespace Proveout.Engine.Motion;

/// <summary>Repeatability within groups of readings and reproducibility between them (ISO 5725-2:1994, 7.4): after each homing, each attaching, each day.</summary>
/// <param name="RepeatabilityMillimetres">Standard deviation within a group.</param>
/// <param name="ReproducibilityMillimetres">Standard deviation of one reading in any group.</param>
public sealed record ProbeGroups(double RepeatabilityMillimetres, double ReproducibilityMillimetres)
{
    /// <summary>Analyses groups; null below two groups, or when a group has fewer than two readings.</summary>
    public static ProbeGroups? Of(IReadOnlyList<IReadOnlyList<double>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.Count < 2 || groups.Any(group => group.Count < 2))
            return null;
        var total = groups.Sum(group => group.Count);
        var mean = groups.Sum(group => group.Sum()) / total;
        var within = groups.Sum(group => group.Sum(reading => Square(reading - group.Average()))) / (total - groups.Count);
        var between = groups.Sum(group => group.Count * Square(group.Average() - mean)) / (groups.Count - 1);
        var size = (total - (groups.Sum(group => (double)group.Count * group.Count) / total)) / (groups.Count - 1);
        return new(Math.Sqrt(within), Math.Sqrt(within + Math.Max(0, (between - within) / size)));
    }

    private static double Square(double value) => value * value;
}
