namespace Proveout.Engine.Faults;

/// <summary>Finds all sets of a given number of faults that explain every reading.</summary>
/// <remarks>Each step takes the failed reading that fewest faults explain, and tries each of those; at most a fixed number of steps.</remarks>
/// <param name="evidence">The readings.</param>
/// <param name="together">Number of faults in a set.</param>
internal sealed class ExplanationSearch(Evidence evidence, int together)
{
    private const int MostSteps = 20_000;
    private const int MostExplainers = 60;

    private readonly Dictionary<int, int[]> _explainers = [];
    private readonly Dictionary<string, (int[] Faults, double Weight)> _found = new(StringComparer.Ordinal);
    private int _steps;

    /// <summary>The sets found, with their weight: priors times likelihood.</summary>
    public IReadOnlyList<(int[] Faults, double Weight)> Run()
    {
        foreach (var item in evidence.Failed)
            _explainers[item] =
            [
                .. evidence.Partners
                    .Where(fault => evidence.Explains(fault, item))
                    .OrderByDescending(evidence.Prior)
                    .Take(together == 1 ? int.MaxValue : MostExplainers),
            ];
        Extend([]);
        return [.. _found.Values];
    }

    private void Extend(int[] chosen)
    {
        if (++_steps > MostSteps)
            return;
        var open = evidence.Failed.Where(item => !evidence.Allows(chosen, item)).ToArray();
        if (open.Length == 0)
            Keep(chosen);
        else if (chosen.Length < together)
            foreach (var fault in _explainers[open.MinBy(item => _explainers[item].Length)])
                if (!chosen.Contains(fault))
                    Extend([.. chosen, fault]);
    }

    private void Keep(int[] chosen)
    {
        var weight = evidence.Likelihood(chosen);
        foreach (var fault in chosen)
            weight *= evidence.Prior(fault);
        if (weight > 0)
            _found.TryAdd(string.Join(',', chosen.Order()), ([.. chosen.Order()], weight));
    }
}
