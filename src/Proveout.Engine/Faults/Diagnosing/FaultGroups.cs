namespace Proveout.Engine.Faults;

/// <summary>Which faults no check tells apart, by number of their group.</summary>
internal sealed class FaultGroups
{
    private readonly int[] _groupOf;

    private FaultGroups(int[] groupOf) => _groupOf = groupOf;

    /// <summary>Groups all faults of a dictionary.</summary>
    public static FaultGroups Of(FaultDictionary dictionary)
    {
        var groupOf = new int[dictionary.Faults.Count];
        foreach (var (number, group) in AmbiguityGroup.Of(dictionary, Enumerable.Range(0, groupOf.Length)).Index())
            foreach (var fault in group.Faults)
                groupOf[fault] = number;
        return new(groupOf);
    }

    /// <summary>Number of a fault's group.</summary>
    public int Of(int fault) => _groupOf[fault];

    /// <summary>Hypotheses that differ only in faults that no check tells apart, or in what is set aside, taken as one; most likely first.</summary>
    public IReadOnlyList<(IReadOnlyList<int> Faults, double Probability)> Merge(Posterior posterior) =>
    [
        .. posterior.Hypotheses
            .Where(hypothesis => hypothesis.Faults.Count > 0)
            .GroupBy(hypothesis => string.Join('+', hypothesis.Faults.Select(Of).Order()), StringComparer.Ordinal)
            .Select(group => (group.First().Faults, Probability: group.Sum(hypothesis => hypothesis.Probability)))
            .OrderByDescending(group => group.Probability),
    ];

    /// <summary>Entropy in bits of weights that need not add up to 1.</summary>
    public static double Entropy(IEnumerable<double> weights)
    {
        double[] all = [.. weights.Where(weight => weight > 0)];
        var total = all.Sum();
        return -all.Sum(weight => weight / total * Math.Log2(weight / total));
    }
}
