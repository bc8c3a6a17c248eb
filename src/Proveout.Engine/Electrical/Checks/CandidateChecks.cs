using System.Collections.Concurrent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Makes every check that is worth considering, with what the machine as designed shows.</summary>
internal static class CandidateChecks
{
    /// <summary>The candidates: first those of resistance, set-up by set-up, then diode tests, then insulation tests.</summary>
    public static IReadOnlyList<CandidateCheck> Of(WiringContext context, IReadOnlyList<ElectricalSetUp> setUps, Func<int, StateNetwork> restOf)
    {
        var places = setUps.Select(setUp => setUp.State.PlugsApart).Distinct().ToDictionary(apart => apart, apart => new ProbePlaces(context.Wiring, new MachineState(apart, [])));
        var insulation = new InsulationPairs(context);
        var ofSetUps = new CandidateCheck[setUps.Count][];
        // Those with all controls at rest take longest, by far: they come first, and the others one by one as processors come free.
        var order = Enumerable.Range(0, setUps.Count).OrderBy(index => setUps[index].Operated is not null);
        Parallel.ForEach(Partitioner.Create(order, EnumerablePartitionerOptions.NoBuffering), index =>
            ofSetUps[index] = [.. OfSetUp(context, index, setUps[index], restOf(index), places[setUps[index].State.PlugsApart], insulation)]);
        return [.. ofSetUps.SelectMany(ofSetUp => ofSetUp).OrderBy(candidate => PlaceOf(candidate.Mode))];
    }

    private static int PlaceOf(MeterMode mode) => mode switch
    {
        ResistanceMode => 0,
        DiodeTestMode => 1,
        _ => 2,
    };

    private static IEnumerable<CandidateCheck> OfSetUp(WiringContext context, int index, ElectricalSetUp setUp, StateNetwork rest, ProbePlaces places, InsulationPairs insulation)
    {
        IStateReadings state = setUp.Operated is null ? rest : new OperatedNetwork(rest, OperatedNetwork.SwitchedBy(context.Wiring, rest, setUp));
        var drafts = new CheckDrafts(index, setUp.Text.Id, places);
        return Resistances(context, setUp, state, places, drafts)
            .Concat(setUp.Operated is null ? DiodeTests(context, rest, places, drafts) : [])
            .Concat(InsulationTests(insulation, setUp, state, drafts));
    }

    private static IEnumerable<CandidateCheck> Resistances(
        WiringContext context, ElectricalSetUp setUp, IStateReadings state, ProbePlaces places, CheckDrafts drafts)
    {
        var pairs = setUp.Operated is { } operated
            ? ContactPairs.Of(context.Wiring, state.Conducts, places, operated)
            : ProbePairs.AtRest(context.Wiring, state.Conducts, places);
        foreach (var ((a, b), (low, high)) in pairs.Zip(Limits(new JunctionBounds(state), [.. pairs], sideBySide: setUp.Operated is null)))
        {
            var mode = IsBond(context, a, b) ? MeterMode.FourWire : MeterMode.Resistance;
            yield return drafts.Of(mode, a, b, mode.Shown(low, high));
        }
    }

    // With all controls at rest there may be tens of thousands of pairs. With one operated there are a few, and the changed network that is asked is one thread's own.
    private static (double LowOhms, double HighOhms)[] Limits(JunctionBounds bounds, (int A, int B)[] pairs, bool sideBySide)
    {
        if (!sideBySide)
            return Array.ConvertAll(pairs, pair => bounds.Resistance(pair.A, pair.B));
        var limits = new (double, double)[pairs.Length];
        Parallel.For(0, pairs.Length, index => limits[index] = bounds.Resistance(pairs[index].A, pairs[index].B));
        return limits;
    }

    private static bool IsBond(WiringContext context, int a, int b) =>
        context.ClassOf(a) == NetClass.ProtectiveEarth && context.ClassOf(b) == NetClass.ProtectiveEarth;

    // Both polarities, as two checks, where they differ: there a junction decides. Expectations are the bounds that are found anew under each fault,
    // not the sharper ones of a solution, so that a check that a fault leaves out of its responses truly shows what it showed.
    private static IEnumerable<CandidateCheck> DiodeTests(WiringContext context, StateNetwork state, ProbePlaces places, CheckDrafts drafts)
    {
        var bounds = new DiodeBounds(context.Wiring, state, MeterMode.DiodeTest);
        foreach (var (a, b) in new DiodePairs(context, state, places.Nodes).All())
        {
            var (one, other) = (bounds.Shown(a, b), bounds.Shown(b, a));
            if (one == other)
                continue;
            if (Says(one))
                yield return drafts.Of(MeterMode.DiodeTest, a, b, one);
            if (Says(other))
                yield return drafts.Of(MeterMode.DiodeTest, b, a, other);
        }
    }

    private static bool Says(ReadingInterval shown) => shown != ReadingInterval.Anything && !(shown.Low <= 0 && double.IsPositiveInfinity(shown.High));

    private static IEnumerable<CandidateCheck> InsulationTests(InsulationPairs pairs, ElectricalSetUp setUp, IStateReadings state, CheckDrafts drafts)
    {
        foreach (var (line, neutral, earth) in pairs.Of(setUp))
        {
            var (low, high) = InsulationBounds.Of(state, line, neutral, earth);
            yield return drafts.Of(MeterMode.Insulation, line, earth, MeterMode.Insulation.Expected(low, high), neutral);
        }
    }
}
