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
        var singles = Members(suspects);
        var setUpCost = dictionary.SetUps.ToDictionary(setUp => setUp.Id, setUp => setUp.CostSeconds, StringComparer.Ordinal);
        int? best = null;
        var bestWorth = 0.0;
        foreach (var check in singles.SelectMany(suspect => dictionary.ResponseOf(suspect.Fault).Checks).Distinct())
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

    // A fault of a set is suspected as much as all sets that it is in.
    private static (int Fault, double Probability)[] Members(IReadOnlyList<Hypothesis> suspects)
    {
        var members = suspects
            .SelectMany(suspect => suspect.Faults.Select(fault => (Fault: fault, suspect.Probability)))
            .GroupBy(item => item.Fault)
            .Select(group => (Fault: group.Key, Probability: group.Sum(item => item.Probability)))
            .OrderByDescending(item => item.Probability)
            .Take(MostSuspects)
            .ToArray();
        if (members.Length == 0)
            return [];
        var total = members.Sum(item => item.Probability);
        return [.. members.Select(item => (item.Fault, item.Probability / total))];
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
