namespace Proveout.Engine.Electrical;

/// <summary>Sorts the candidate checks of a campaign into tables that are simulated together.</summary>
/// <param name="context">The wiring.</param>
/// <param name="setUps">The set-ups.</param>
/// <param name="candidates">The candidates, in the order of the checks.</param>
/// <param name="restOf">The network of a set-up, by its index, with all controls at rest.</param>
internal sealed class CheckTables(WiringContext context, IReadOnlyList<ElectricalSetUp> setUps, CandidateCheck[] candidates, Func<int, StateNetwork> restOf)
{
    private readonly List<Range> _ranges = RangesOf(candidates);
    private readonly ILookup<int, CandidateCheck> _diodeTestsOf = candidates.Where(candidate => candidate.Mode is DiodeTestMode).ToLookup(candidate => candidate.SetUp);

    /// <summary>Makes the tables, in the order of the checks, on all processors.</summary>
    public ICheckTable[] Make()
    {
        // Diode tests are simulated on the resistances of their set-up, which are made first.
        var tables = new ICheckTable[_ranges.Count];
        Parallel.ForEach(Places(areDiodeTests: false), place => tables[place] = PortTableOf(_ranges[place]));
        Parallel.ForEach(Places(areDiodeTests: true), place => tables[place] = DiodeTableOf(_ranges[place], tables));
        return tables;
    }

    private IEnumerable<int> Places(bool areDiodeTests) => Enumerable.Range(0, _ranges.Count).Where(place => IsDiodeTest(_ranges[place]) == areDiodeTests);

    private bool IsDiodeTest(Range range) => candidates[range.Start].Mode is DiodeTestMode;

    private static List<Range> RangesOf(CandidateCheck[] candidates)
    {
        var ranges = new List<Range>();
        for (var first = 0; first < candidates.Length; first = ranges[^1].End.Value)
        {
            var (mode, setUp) = (candidates[first].Mode, candidates[first].SetUp);
            var end = first + 1;
            while (end < candidates.Length && candidates[end].SetUp == setUp && AreSimulatedTogether(mode, candidates[end].Mode))
                end++;
            ranges.Add(first..end);
        }

        return ranges;
    }

    private static bool AreSimulatedTogether(MeterMode one, MeterMode other) =>
        (one is ResistanceMode && other is ResistanceMode) || (one is DiodeTestMode && other is DiodeTestMode);

    private DiodeTable DiodeTableOf(Range range, ICheckTable[] tables)
    {
        var setUp = candidates[range.Start].SetUp;
        var ports = _ranges.FindIndex(other => candidates[other.Start].SetUp == setUp && !IsDiodeTest(other));
        return new DiodeTable((PortTable)tables[ports], ports, restOf(setUp), context.Wiring, candidates[range], range.Start.Value);
    }

    private PortTable PortTableOf(Range range)
    {
        var own = candidates[range];
        var setUp = own[0].SetUp;
        (int, int)? tied = own[0].TiedTo is { } node ? (own[0].A, node) : null;
        CandidateCheck[] diodes = tied is null ? [.. _diodeTestsOf[setUp]] : [];
        var rest = restOf(setUp);
        return new PortTable(rest, OperatedNetwork.SwitchedBy(context.Wiring, rest, setUps[setUp]), own, range.Start.Value, tied, diodes);
    }
}
