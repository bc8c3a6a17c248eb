using Proveout.Engine.Faults;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>What one build teaches of how often mistakes are made.</summary>
/// <param name="Found">Mistakes found and mended, by kind; the same mistake counts once.</param>
/// <param name="Expected">How many would have been expected by the prior rates, by kind, among those that this build's readings or finds could show.</param>
/// <remarks>
/// A mistake that no reading of the build could show was not looked for, so its absence teaches nothing: only faults that a check with a
/// reading surely catches count, and those found in another way.
/// </remarks>
public sealed record BuildExperience(IReadOnlyDictionary<string, int> Found, IReadOnlyDictionary<string, double> Expected)
{
    /// <summary>The experience of a build.</summary>
    /// <param name="dictionary">Its machine's faults with the rates that were assumed before anything was learned.</param>
    /// <param name="mistakes">Mistakes found in it.</param>
    /// <param name="checks">Checks that were read in it.</param>
    public static BuildExperience Of(FaultDictionary dictionary, IEnumerable<MistakeFound> mistakes, IEnumerable<string> checks)
    {
        var found = mistakes.DistinctBy(mistake => mistake.FaultId).ToArray();
        var foundIds = found.Select(mistake => mistake.FaultId).ToHashSet(StringComparer.Ordinal);
        var read = checks.Select(dictionary.IndexOfCheck).OfType<int>().ToHashSet();
        return new(
            found.CountBy(mistake => mistake.FaultKind).ToDictionary(StringComparer.Ordinal),
            Enumerable.Range(0, dictionary.Faults.Count)
                .Where(fault => foundIds.Contains(dictionary.Faults[fault].Id) || dictionary.ChecksThatCatch(fault).Any(read.Contains))
                .Select(fault => dictionary.Faults[fault])
                .AggregateBy(fault => fault.Kind, 0.0, (sum, fault) => sum + fault.Prior)
                .ToDictionary(StringComparer.Ordinal));
    }
}
