using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>Makes every check that is worth considering, with what the machine as designed shows.</summary>
internal static class CandidateChecks
{
    /// <summary>The candidates of all set-ups, set-up by set-up; of each, first those of resistance, then diode tests, then insulation tests.</summary>
    public static IReadOnlyList<CandidateCheck> Of(WiringContext context, IReadOnlyList<ElectricalSetUp> setUps, IReadOnlyList<StateNetwork> states) =>
    [
        .. Enumerable.Range(0, setUps.Count)
            .AsParallel()
            .AsOrdered()
            .Select(index => OfSetUp(context, index, setUps[index], states[index]).ToArray())
            .SelectMany(ofSetUp => ofSetUp),
    ];

    private static IEnumerable<CandidateCheck> OfSetUp(WiringContext context, int index, ElectricalSetUp setUp, StateNetwork state)
    {
        var places = new ProbePlaces(context.Wiring, setUp.State);
        var drafts = new CheckDrafts(index, setUp.Text.Id, places);
        return Resistances(context, setUp, state, places, drafts)
            .Concat(setUp.Operated is null ? DiodeTests(context, state, places, drafts) : [])
            .Concat(InsulationTests(context, setUp, state, drafts));
    }

    private static IEnumerable<CandidateCheck> Resistances(
        WiringContext context, ElectricalSetUp setUp, StateNetwork state, ProbePlaces places, CheckDrafts drafts)
    {
        var pairs = new ProbePairs(context.Wiring, state.Conducts, places.Nodes);
        var bounds = new JunctionBounds(state);
        foreach (var (a, b) in setUp.Operated is { } operated ? pairs.AcrossContactsOf(operated) : pairs.All())
        {
            var mode = IsBond(context, a, b) ? MeterMode.FourWire : MeterMode.Resistance;
            var (low, high) = bounds.Resistance(a, b);
            yield return drafts.Of(mode, a, b, mode.Shown(low, high));
        }
    }

    private static bool IsBond(WiringContext context, int a, int b) =>
        context.ClassOf(a) == NetClass.ProtectiveEarth && context.ClassOf(b) == NetClass.ProtectiveEarth;

    // Both polarities, as two checks, where they differ: there a junction decides.
    private static IEnumerable<CandidateCheck> DiodeTests(WiringContext context, StateNetwork state, ProbePlaces places, CheckDrafts drafts)
    {
        var reading = new DiodeReading(context.Wiring, state);
        foreach (var (a, b) in new DiodePairs(context, state, places.Nodes).All())
        {
            var (one, other) = (reading.Shown(a, b, MeterMode.DiodeTest), reading.Shown(b, a, MeterMode.DiodeTest));
            if (one == other)
                continue;
            if (Says(one))
                yield return drafts.Of(MeterMode.DiodeTest, a, b, one);
            if (Says(other))
                yield return drafts.Of(MeterMode.DiodeTest, b, a, other);
        }
    }

    private static bool Says(ReadingInterval shown) => shown != ReadingInterval.Anything && !(shown.Low <= 0 && double.IsPositiveInfinity(shown.High));

    private static IEnumerable<CandidateCheck> InsulationTests(WiringContext context, ElectricalSetUp setUp, StateNetwork state, CheckDrafts drafts)
    {
        foreach (var (line, neutral, earth) in InsulationPairs.Of(context, setUp, state))
        {
            var (low, high) = InsulationBounds.Of(state, line, neutral, earth);
            yield return drafts.Of(MeterMode.Insulation, line, earth, MeterMode.Insulation.Expected(low, high), neutral);
        }
    }
}
