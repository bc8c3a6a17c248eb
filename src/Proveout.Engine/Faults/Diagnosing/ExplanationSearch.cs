namespace Proveout.Engine.Faults;

/// <summary>Finds sets of a given number of faults that explain every reading, each of them alone able to show some reading that is off.</summary>
/// <remarks>
/// Each step takes the reading that fewest faults explain, and tries each of those; at most a fixed number of steps, so that sets may be
/// missed where very many faults explain very many readings. Where several faults of a set change one check, its reading says nothing.
/// </remarks>
/// <param name="evidence">The readings.</param>
/// <param name="together">Number of faults in a set.</param>
internal sealed class ExplanationSearch(Evidence evidence, int together)
{
    private const int MostSteps = 20_000;
    private const int MostExplainers = 60;

    private readonly int[] _off = [.. Enumerable.Range(0, evidence.Items.Count).Where(item => evidence.Items[item] is { IsOff: true, IsSymptom: false })];
    private readonly Dictionary<int, int[]> _explainers = [];
    private readonly Dictionary<string, Explanation> _found = new(StringComparer.Ordinal);
    private int _steps;

    /// <summary>The sets found.</summary>
    public IReadOnlyList<Explanation> Run()
    {
        int[] partners = [.. evidence.Touching.Where(IsPossiblePartner)];
        foreach (var item in _off)
            _explainers[item] =
                [.. partners.Where(fault => Evidence.Has(evidence.Fitting(fault), item)).OrderByDescending(evidence.LogOdds).Take(MostExplainers)];
        Extend([]);
        return [.. _found.Values];
    }

    // It explains a reading that is off, and no reading as it should be speaks against it.
    private bool IsPossiblePartner(int fault)
    {
        var explains = false;
        for (var word = 0; word < evidence.Words; word++)
        {
            if ((evidence.Unexplained(fault)[word] & ~evidence.Off[word] & evidence.Measured[word]) != 0)
                return false;
            explains |= (evidence.Fitting(fault)[word] & evidence.Off[word] & evidence.Measured[word]) != 0;
        }

        return explains;
    }

    private void Extend(int[] chosen)
    {
        if (++_steps > MostSteps)
            return;
        var open = _off.Where(item => !Together(chosen, item).Contains(evidence.Items[item].Value)).ToArray();
        if (open.Length == 0)
            Keep(chosen);
        else if (chosen.Length < together)
            foreach (var fault in _explainers[open.MinBy(item => _explainers[item].Length)])
                if (!chosen.Contains(fault) && !chosen.Any(other => evidence.AreAlternatives(fault, other)))
                    Extend([.. chosen, fault]);
    }

    private void Keep(int[] chosen)
    {
        int[] set = [.. chosen.Order()];
        var weight = set.Sum(evidence.LogOdds);
        List<int> aside = [];
        for (var item = 0; item < evidence.Items.Count; item++)
        {
            var about = evidence.Items[item];
            var shown = Together(set, item);
            weight += shown == ReadingInterval.Anything ? about.LogAnything : about.LogLikelihood(shown);
            if (shown.Contains(about.Value))
                continue;
            if (!about.IsSymptom)
                return;
            aside.Add(about.Check);
        }

        _found.TryAdd(string.Join(',', set), new(set, weight, aside));
    }

    private ReadingInterval Together(int[] faults, int item)
    {
        ReadingInterval? only = null;
        foreach (var fault in faults)
            if (evidence.Response(fault, item) is { } shown)
            {
                if (only is not null)
                    return ReadingInterval.Anything;
                only = shown;
            }

        return only ?? evidence.Items[item].Sound;
    }
}
