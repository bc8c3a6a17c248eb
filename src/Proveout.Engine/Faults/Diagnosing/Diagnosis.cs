namespace Proveout.Engine.Faults;

/// <summary>Ranks the mistakes that explain all readings so far.</summary>
/// <remarks>
/// Bayes' rule: prior rate times the likelihood of every reading, over single faults; when no single fault explains the readings, over sets
/// of two, then three, then four (the principle of minimal diagnosis; de Kleer and Williams, Artificial Intelligence 32 (1987) 97-130).
/// Where only one fault of a set changes a check, its interval holds; where several do, the reading says nothing.
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
        for (var together = 1; together <= MostTogether; together++)
        {
            var found = new ExplanationSearch(evidence, together).Run();
            if (found.Count > 0)
                return Ranked(found);
        }

        return [];
    }

    private static IReadOnlyList<Hypothesis> Ranked(IReadOnlyList<(int[] Faults, double Weight)> found)
    {
        var total = found.Sum(item => item.Weight);
        return [.. found.OrderByDescending(item => item.Weight).Select(item => new Hypothesis(item.Faults, item.Weight / total))];
    }
}
