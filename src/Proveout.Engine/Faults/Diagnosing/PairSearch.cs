namespace Proveout.Engine.Faults;

/// <summary>Finds every pair of faults that explains all readings where neither fault does so alone.</summary>
/// <remarks>
/// Where only one fault of a pair changes a check, its interval holds. Where both do, the simulator says what is shown; without one the
/// reading says nothing, but one of the two must be able to show it.
/// </remarks>
/// <param name="evidence">The readings.</param>
/// <param name="simulator">Simulates several faults at once; may be null.</param>
internal sealed class PairSearch(Evidence evidence, IFaultSimulator? simulator)
{
    // Each costs a simulation at every reading that the pair can change.
    private const int MostSimulated = 1000;

    /// <summary>The pairs.</summary>
    public IReadOnlyList<Explanation> Run()
    {
        var found = Candidates();
        if (simulator is null)
            return [.. found.Where(pair => !evidence.AreAlternatives(pair.One, pair.Other)).Select(pair => Weigh(pair.One, pair.Other))];
        found.Sort((one, other) => Prior(other).CompareTo(Prior(one)));
        return
        [
            .. found.Take(MostSimulated).Select(pair => Simulate(pair.One, pair.Other)).OfType<Explanation>(),
            .. found.Skip(MostSimulated).Where(pair => Explains(pair.One, pair.Other, strict: true)).Select(pair => Weigh(pair.One, pair.Other)),
        ];
    }

    private double Prior((int One, int Other) pair) => evidence.LogOdds(pair.One) + evidence.LogOdds(pair.Other);

    private List<(int One, int Other)> Candidates()
    {
        var starts = Starts();
        var isStart = starts.ToHashSet();
        var found = new List<(int, int)>();
        foreach (var one in starts)
            foreach (var other in evidence.Touching)
                if ((other > one || (other < one && !isStart.Contains(other))) && Explains(one, other, strict: simulator is null))
                    found.Add((one, other));
        return found;
    }

    // Whatever explains all has a part in the reading that fewest faults change.
    private int[] Starts()
    {
        int[][] ofReadings = [.. Off(isSymptom: false).Select(item => Changing(item).ToArray())];
        return ofReadings.Length > 0
            ? ofReadings.MinBy(faults => faults.Length)!
            : [.. Off(isSymptom: true).SelectMany(Changing).Distinct()];
    }

    private IEnumerable<int> Off(bool isSymptom) =>
        Enumerable.Range(0, evidence.Items.Count).Where(item => evidence.Items[item].IsOff && evidence.Items[item].IsSymptom == isSymptom);

    private IEnumerable<int> Changing(int item) => evidence.Touching.Where(fault => Evidence.Has(evidence.Changed(fault), item));

    // All readings are explained, and each of the two explains something that the other leaves unexplained.
    private bool Explains(int one, int other, bool strict)
    {
        var oneLacks = evidence.Unexplained(one);
        var otherLacks = evidence.Unexplained(other);
        var oneNeeded = false;
        var otherNeeded = false;
        for (var word = 0; word < oneLacks.Length; word++)
        {
            // What both change is for the simulator to judge, where there is one.
            var both = strict ? 0 : evidence.Changed(one)[word] & evidence.Changed(other)[word];
            var open = Open(one, other, word) & ~both;
            if ((open & evidence.Measured[word]) != 0)
                return false;
            oneNeeded |= (otherLacks[word] & ~open) != 0;
            otherNeeded |= (oneLacks[word] & ~open) != 0;
        }

        return oneNeeded && otherNeeded;
    }

    // What one of them changes without fitting and the other does not make fit, and what is off and neither changes.
    private ulong Open(int one, int other, int word) =>
        ((evidence.Changed(one)[word] | evidence.Changed(other)[word]) | evidence.Off[word])
        & ~(evidence.Fitting(one)[word] | evidence.Fitting(other)[word]);

    private Explanation Weigh(int one, int other)
    {
        var weight = Prior((one, other));
        List<int> aside = [];
        for (var item = 0; item < evidence.Items.Count; item++)
        {
            var about = evidence.Items[item];
            var (first, second) = (evidence.Response(one, item), evidence.Response(other, item));
            var shown = first is not null && second is not null ? ReadingInterval.Anything : first ?? second ?? about.Sound;
            weight += shown == ReadingInterval.Anything ? about.LogAnything : about.LogLikelihood(shown);
            if (!shown.Contains(about.Value))
                aside.Add(about.Check);
        }

        return new(Ordered(one, other), weight, aside);
    }

    private Explanation? Simulate(int one, int other)
    {
        var pair = Ordered(one, other);
        var weight = Prior((one, other));
        List<int> aside = [];
        for (var item = 0; item < evidence.Items.Count; item++)
        {
            var about = evidence.Items[item];
            var shown = about.Sound;
            if (about.IsOff || Evidence.Has(evidence.Changed(one), item) || Evidence.Has(evidence.Changed(other), item))
            {
                if (simulator!.Shown(pair, about.Check) is not { } together)
                    return null;
                shown = together;
            }

            if (!shown.Contains(about.Value))
            {
                if (!about.IsSymptom)
                    return null;
                aside.Add(about.Check);
            }

            weight += about.LogLikelihood(shown);
        }

        return new(pair, weight, aside);
    }

    private static int[] Ordered(int one, int other) => one < other ? [one, other] : [other, one];
}
