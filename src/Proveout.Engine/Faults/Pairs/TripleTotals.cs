namespace Proveout.Engine.Faults;

/// <summary>Counts triples without listing them.</summary>
internal static class TripleTotals
{
    /// <summary>How many triples of some faults can be made together, and how many hold two that cannot.</summary>
    /// <remarks>
    /// Of triples with one, two or three contradictions: each contradiction is in n - 2 triples, each two at one fault in one; so the sum of the
    /// former less the sum of the latter plus the number of triples with three counts every triple once.
    /// </remarks>
    public static (long Simulated, long Contradictory) Of(int[] faults, Func<int, HashSet<int>> contradicting)
    {
        long count = faults.Length;
        var ends = 0L;
        var twos = 0L;
        var threes = 0L;
        var all = faults.ToHashSet();
        foreach (var fault in faults)
        {
            int[] others = [.. contradicting(fault).Where(all.Contains)];
            ends += others.Length;
            twos += (long)others.Length * (others.Length - 1) / 2;
            foreach (var one in others)
                if (one > fault)
                    threes += others.Count(two => two > one && contradicting(one).Contains(two));
        }

        var contradictory = (ends / 2 * (count - 2)) - twos + threes;
        return ((count * (count - 1) * (count - 2) / 6) - contradictory, contradictory);
    }
}
