namespace Proveout.Engine.Faults;

/// <summary>Counts pairs.</summary>
internal static class PairTotals
{
    /// <summary>Makes the report of a finished run.</summary>
    public static PairReport Of(PairScreen screen, IFaultInteractions interactions, PairCheckpoint done)
    {
        long caught = screen.Everyone.Count(screen.IsCaught);
        long uncaught = screen.Everyone.Length - caught;
        var contradictory = new long[3];
        foreach (var fault in screen.Everyone)
            foreach (var other in interactions.Contradicting(fault))
                if (other > fault)
                    contradictory[(screen.IsCaught(fault) ? 0 : 1) + (screen.IsCaught(other) ? 0 : 1)]++;
        var noneCaught = (uncaught * (uncaught - 1) / 2) - contradictory[(int)PairKind.NoneCaught];
        return new PairReport(
            new PairCount((caught * (caught - 1) / 2) - contradictory[(int)PairKind.BothCaught], Masked(PairKind.BothCaught)),
            new PairCount((caught * uncaught) - contradictory[(int)PairKind.OneCaught], Masked(PairKind.OneCaught)),
            new PairCount(noneCaught, noneCaught - done.NoneCaughtCaught),
            contradictory.Sum(),
            [.. done.Masked.OrderBy(pair => pair.One).ThenBy(pair => pair.Two)]);

        long Masked(PairKind kind) => done.Masked.Count(pair => pair.Kind == kind);
    }
}
