namespace Proveout.Engine.Faults;

/// <summary>Chooses the check that is worth most now.</summary>
public static class NextCheck
{
    private const int MostSuspects = 40;

    /// <summary>The check that is expected to tell most about the suspects a second; null when no check tells any two of them apart.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="suspects">Explanations of the readings so far, most likely first.</param>
    /// <param name="done">Identifiers of checks already read.</param>
    /// <param name="currentSetUp">The set-up that stands now.</param>
    public static int? Of(FaultDictionary dictionary, IReadOnlyList<Hypothesis> suspects, IReadOnlySet<string> done, string currentSetUp)
    {
        var singles = suspects.Where(suspect => suspect.Faults.Count == 1).Take(MostSuspects).Select(suspect => (suspect.Faults[0], suspect.Probability)).ToArray();
        var setUpCost = dictionary.SetUps.ToDictionary(setUp => setUp.Id, setUp => setUp.CostSeconds, StringComparer.Ordinal);
        int? best = null;
        var bestWorth = 0.0;
        foreach (var check in singles.SelectMany(suspect => dictionary.ResponseOf(suspect.Item1).Checks).Distinct())
        {
            if (done.Contains(dictionary.Checks[check].Id))
                continue;
            var seconds = dictionary.Checks[check].CostSeconds + (dictionary.Checks[check].SetUp == currentSetUp ? 0 : setUpCost[dictionary.Checks[check].SetUp]);
            var worth = Gain(dictionary, singles, check) / seconds;
            if (worth > bestWorth + 1e-12)
                (best, bestWorth) = (check, worth);
        }

        return best;
    }

    // Suspects whose intervals overlap may show the same; the information is the entropy of the groups that surely show different readings.
    private static double Gain(FaultDictionary dictionary, (int Fault, double Probability)[] suspects, int check)
    {
        var ordered = suspects
            .Select(suspect => (Interval: dictionary.IntervalOf(suspect.Fault, check), suspect.Probability))
            .OrderBy(item => item.Interval.Low)
            .ToArray();
        var entropy = 0.0;
        var mass = 0.0;
        var end = double.NegativeInfinity;
        foreach (var (interval, probability) in ordered)
        {
            if (interval.Low > end && mass > 0)
            {
                entropy -= mass * Math.Log2(mass);
                mass = 0;
            }

            mass += probability;
            end = Math.Max(end, interval.High);
        }

        return mass is > 0 and < 1 ? entropy - (mass * Math.Log2(mass)) : entropy;
    }
}
