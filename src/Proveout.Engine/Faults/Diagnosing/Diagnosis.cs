namespace Proveout.Engine.Faults;

/// <summary>Ranks the mistakes that explain all readings and symptoms so far.</summary>
/// <remarks>
/// Bayes' rule over the sound machine, every single fault, every pair of which neither explains alone what both do, and a mistake that no
/// rule generates. Sets of three, then four, only when no single fault and no pair explains all readings; then also pairs, and three, with
/// one reading set aside.
/// </remarks>
public static class Diagnosis
{
    private const int FewestLarger = 3;
    private const int MostTogether = 4;

    // What is less likely than this beside the likeliest is left out.
    private const double LeastLogShare = -30;

    /// <summary>What is to be believed after the readings.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="readings">The last reading of each check done, and the outcome of each symptom asked.</param>
    /// <param name="simulator">Simulates several faults at once; without one a check that two faults of a set change says nothing.</param>
    /// <param name="rates">How often people are wrong; the assumed rates when null.</param>
    public static Posterior Of(FaultDictionary dictionary, IReadOnlyList<Reading> readings, IFaultSimulator? simulator = null, DiagnosisRates? rates = null)
    {
        var evidence = new Evidence(dictionary, readings, rates ?? DiagnosisRates.Assumed);
        var isOff = evidence.Off.AsSpan().ContainsAnyExcept(0UL);
        var found = new SingleSearch(evidence, dictionary.Faults.Count).Run().ToList();
        if (isOff)
        {
            found.AddRange(new PairSearch(evidence, simulator).Run());
            if (!found.Exists(item => ExplainsReadings(dictionary, item)))
                found.AddRange(Larger(evidence, simulator));
        }

        return Weighed(dictionary, isOff, found, UnknownMistake.LogWeight(evidence));
    }

    /// <summary>Explanations of what is off, most likely first; empty when every reading is that of a sound machine, or nothing explains them.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="readings">The last reading of each check done, and the outcome of each symptom asked.</param>
    /// <param name="simulator">Simulates several faults at once; may be null.</param>
    public static IReadOnlyList<Hypothesis> Explain(FaultDictionary dictionary, IReadOnlyList<Reading> readings, IFaultSimulator? simulator = null) =>
        Of(dictionary, readings, simulator) is { IsOff: true } posterior ? posterior.Hypotheses : [];

    private static bool ExplainsReadings(FaultDictionary dictionary, Explanation found) =>
        found.Aside.All(check => Symptom.Is(dictionary.Checks[check]));

    private static IEnumerable<Explanation> Larger(Evidence evidence, IFaultSimulator? simulator)
    {
        int[] off = [.. Enumerable.Range(0, evidence.Items.Count).Where(item => evidence.Items[item] is { IsOff: true, IsSymptom: false })];
        // With a single reading off, setting it aside leaves the sound machine, which is weighed already.
        return off.Length < 2
            ? []
            : Fewest(evidence).Concat(off.SelectMany(item => WithoutOne(evidence.Without(item), simulator, evidence.Items[item])));
    }

    private static IReadOnlyList<Explanation> Fewest(Evidence evidence)
    {
        for (var together = FewestLarger; together <= MostTogether; together++)
            if (new ExplanationSearch(evidence, together).Run() is { Count: > 0 } found)
                return found;
        return [];
    }

    private static IEnumerable<Explanation> WithoutOne(Evidence rest, IFaultSimulator? simulator, EvidenceItem misread)
    {
        var pairs = new PairSearch(rest, simulator).Run();
        return (pairs.Count > 0 ? pairs : Fewest(rest))
            .Select(found => found with { LogWeight = found.LogWeight + misread.LogAside, Aside = [.. found.Aside, misread.Check] });
    }

    private static Posterior Weighed(FaultDictionary dictionary, bool isOff, List<Explanation> found, double unknown)
    {
        var top = found.Aggregate(unknown, (most, item) => Math.Max(most, item.LogWeight));
        found.RemoveAll(item => item.LogWeight < top + LeastLogShare);
        var total = Math.Exp(unknown - top) + found.Sum(item => Math.Exp(item.LogWeight - top));
        var sound = found.Find(item => item.Faults.Length == 0 && item.Aside.Count == 0);
        return new Posterior(
            isOff,
            sound is null ? 0 : Math.Exp(sound.LogWeight - top) / total,
            Math.Exp(unknown - top) / total,
            [
                .. found
                    .Where(item => item != sound)
                    .OrderByDescending(item => item.LogWeight)
                    .Select(item => new Hypothesis(
                        item.Faults, Math.Exp(item.LogWeight - top) / total, [.. item.Aside.Select(check => dictionary.Checks[check].Id)])),
            ]);
    }
}
