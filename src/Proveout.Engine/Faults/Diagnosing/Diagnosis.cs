namespace Proveout.Engine.Faults;

/// <summary>Ranks the mistakes that explain all readings so far.</summary>
/// <remarks>
/// Bayes' rule: prior rate times the likelihood of every reading, over single faults; when no single fault explains the readings, over sets
/// of two, then three, then four (the principle of minimal diagnosis; de Kleer and Williams, Artificial Intelligence 32 (1987) 97-130).
/// Where only one fault of a set changes a check, its interval holds; where several do, the reading says nothing. When no set explains all,
/// each failed reading in turn is set aside as misread.
/// </remarks>
public static class Diagnosis
{
    private const int MostTogether = 4;

    /// <summary>Explanations of the readings, most likely first; empty when every reading is that of a sound machine, or nothing explains them.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="readings">The last reading of each check done.</param>
    public static IReadOnlyList<Hypothesis> Explain(FaultDictionary dictionary, IReadOnlyList<Reading> readings)
    {
        var evidence = new Evidence(dictionary, readings);
        if (evidence.Failed.Count == 0)
            return [];
        var all = Fewest(evidence, null);
        return Ranked(all.Count > 0 ? all : [.. evidence.Failed.SelectMany(item => WithoutOne(dictionary, readings, evidence.CheckOf(item)))]);
    }

    private static IEnumerable<Hypothesis> WithoutOne(FaultDictionary dictionary, IReadOnlyList<Reading> readings, string misread)
    {
        var rest = new Evidence(dictionary, [.. readings.Where(reading => reading.CheckId != misread)]);
        return rest.Failed.Count == 0 ? [new Hypothesis([], 1, misread)] : Fewest(rest, misread);
    }

    // The probabilities are weights here; ranking makes them shares.
    private static IReadOnlyList<Hypothesis> Fewest(Evidence evidence, string? setAside)
    {
        for (var together = 1; together <= MostTogether; together++)
        {
            var found = new ExplanationSearch(evidence, together).Run();
            if (found.Count > 0)
                return [.. found.Select(item => new Hypothesis(item.Faults, item.Weight, setAside))];
        }

        return [];
    }

    private static IReadOnlyList<Hypothesis> Ranked(IReadOnlyList<Hypothesis> found)
    {
        var total = found.Sum(item => item.Probability);
        return [.. found.OrderByDescending(item => item.Probability).Select(item => item with { Probability = item.Probability / total })];
    }
}
