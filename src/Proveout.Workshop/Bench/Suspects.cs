using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts explanations of readings into words, those that no check tells apart in one.</summary>
internal static class Suspects
{
    /// <summary>The likeliest suspects.</summary>
    public static IReadOnlyList<Suspect> Of(FaultDictionary dictionary, IReadOnlyList<Hypothesis> hypotheses, int most)
    {
        var groupOf = AmbiguityGroup.Of(dictionary, hypotheses.SelectMany(hypothesis => hypothesis.Faults).Distinct())
            .SelectMany((group, number) => group.Faults.Select(fault => (fault, number)))
            .ToDictionary(item => item.fault, item => item.number);
        return
        [
            .. hypotheses
                .GroupBy(hypothesis => string.Join('+', hypothesis.Faults.Select(fault => groupOf[fault]).Order()))
                .Select(group => InWords(dictionary, [.. group]))
                .OrderByDescending(suspect => suspect.Probability)
                .Take(most),
        ];
    }

    private static Suspect InWords(FaultDictionary dictionary, Hypothesis[] alike)
    {
        var worst = alike.SelectMany(hypothesis => hypothesis.Faults).Select(fault => dictionary.Faults[fault]).MaxBy(fault => fault.Severity)!;
        return new Suspect(
            string.Join(" Or: ", alike.Select(hypothesis => string.Join(" And: ", hypothesis.Faults.Select(fault => dictionary.Faults[fault].Sentence)))),
            alike.Sum(hypothesis => hypothesis.Probability),
            worst.Severity,
            worst.Consequence,
            [.. alike.SelectMany(hypothesis => hypothesis.Faults).Distinct().Select(fault => dictionary.Faults[fault].Id)]);
    }
}
