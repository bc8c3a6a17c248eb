using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts explanations of readings into words, those that no check tells apart in one.</summary>
internal static class Suspects
{
    /// <summary>The likeliest suspects; none while nothing is off.</summary>
    public static IReadOnlyList<Suspect> Of(PlannedMachine planned, Posterior posterior, IReadOnlyList<Reading> readings, int most) =>
        Of(planned.Dictionary, planned.Simulators?.Invoke(), posterior, readings, most);

    /// <summary>The same by a dictionary of any trade.</summary>
    public static IReadOnlyList<Suspect> Of(FaultDictionary dictionary, IFaultSimulator? simulator, Posterior posterior, IReadOnlyList<Reading> readings, int most)
    {
        var reasons = new SuspectReasonWords(dictionary, new WhySuspected(dictionary, posterior, readings, simulator));
        var hypotheses = posterior.IsOff ? posterior.Hypotheses : [];
        var groupOf = AmbiguityGroup.Of(dictionary, hypotheses.SelectMany(hypothesis => hypothesis.Faults).Distinct())
            .SelectMany((group, number) => group.Faults.Select(fault => (fault, number)))
            .ToDictionary(item => item.fault, item => item.number);
        return
        [
            .. hypotheses
                .GroupBy(hypothesis => (string.Join('+', hypothesis.Faults.Select(fault => groupOf[fault]).Order()), string.Join('+', hypothesis.SetAside)))
                .Select(group => group.ToArray())
                .OrderByDescending(alike => alike.Sum(hypothesis => hypothesis.Probability))
                .Take(most)
                .Select(alike => reasons.Add(InWords(dictionary, alike), alike)),
        ];
    }

    private static Suspect InWords(FaultDictionary dictionary, Hypothesis[] alike)
    {
        var worst = alike.SelectMany(hypothesis => hypothesis.Faults).Select(fault => dictionary.Faults[fault]).MaxBy(fault => fault.Severity);
        return new Suspect(
            Misreading(dictionary, alike[0].SetAside) + SentenceOf(dictionary, alike),
            alike.Sum(hypothesis => hypothesis.Probability),
            worst?.Severity ?? Severity.Hidden,
            worst?.Consequence ?? Again(dictionary, alike[0].SetAside),
            [.. alike.SelectMany(hypothesis => hypothesis.Faults).Distinct().Select(fault => dictionary.Faults[fault].Id)]);
    }

    // No mistake is made then; what was entered is doubted.
    private static string Again(FaultDictionary dictionary, IReadOnlyList<string> checks) =>
        checks.All(id => Symptom.Is(dictionary.Checks[dictionary.IndexOfCheck(id)!.Value]))
            ? "Nothing is wrong then: look at it again."
            : "No mistake that Proveout knows shows it: measure it again, a meter with its leads zeroed.";

    private static string Misreading(FaultDictionary dictionary, IReadOnlyList<string> checks) => string.Concat(
        checks.Select(id => dictionary.Checks[dictionary.IndexOfCheck(id)!.Value])
            .Select(check => Symptom.Is(check) ? $"\"{check.Title}\" is not as reported. " : $"The reading of {check.Title} is misread. "));

    // What all have in common once, and then what no check tells apart.
    private static string SentenceOf(FaultDictionary dictionary, Hypothesis[] alike)
    {
        var common = alike.Select(hypothesis => hypothesis.Faults).Aggregate((one, other) => [.. one.Intersect(other)]);
        var either = alike.Select(hypothesis => Together(dictionary, hypothesis.Faults.Except(common))).Where(sentence => sentence.Length > 0).Distinct().ToArray();
        return string.Join(
            common.Count > 0 && either.Length > 1 ? " And either: " : " And: ",
            new[] { Together(dictionary, common), string.Join(" Or: ", either) }.Where(sentence => sentence.Length > 0));
    }

    private static string Together(FaultDictionary dictionary, IEnumerable<int> faults) =>
        string.Join(" And: ", faults.Select(fault => dictionary.Faults[fault].Sentence));
}
