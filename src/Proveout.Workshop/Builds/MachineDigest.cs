using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>The builds of one machine, by its name, and how their readings of each check are spread.</summary>
internal sealed class MachineDigest
{
    private readonly Dictionary<string, HashSet<BuildDigest>> _readers = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CheckSpread> _spreads = new(StringComparer.Ordinal);
    private string _spreadsOf = "";
    private readonly Dictionary<string, IReadOnlyList<string>> _plans = new(StringComparer.Ordinal);
    private BuildDigest[]? _newestFirst;

    public List<BuildDigest> Builds { get; } = [];

    /// <summary>Names of checks, one copy of each for all builds.</summary>
    public SharedTexts CheckNames { get; } = new();

    /// <summary>The builds, newest first.</summary>
    public IReadOnlyList<BuildDigest> NewestFirst => _newestFirst ??= [.. Builds.OrderByDescending(build => build.Build.Started).ThenByDescending(build => build.Build.Id)];

    /// <summary>The checks that some build has a word on.</summary>
    public IReadOnlyCollection<string> Checks => _readers.Keys;

    public void Add(BuildDigest build)
    {
        Builds.Add(build);
        _newestFirst = null;
    }

    public void Take(BuildDigest build, Entry entry)
    {
        // A plan repeats the names of all checks in each build: kept once.
        if (entry.Content is PlanFixed plan)
            entry = entry with { Content = plan with { CheckIds = Shared(plan) } };
        if (build.Take(entry) is not { } check)
            return;
        if (!_readers.TryGetValue(check, out var readers))
            _readers.Add(check, readers = []);
        readers.Add(build);
        _spreads.Remove(check);
    }

    /// <summary>How the readings of a check are spread; worked out anew only after a build has read it.</summary>
    public CheckSpread SpreadOf(PlannedMachine planned, string checkId)
    {
        if (_spreadsOf != planned.Machine.Fingerprint)
        {
            _spreads.Clear();
            _spreadsOf = planned.Machine.Fingerprint;
        }

        if (!_spreads.TryGetValue(checkId, out var spread))
            _spreads[checkId] = spread = CheckSpreads.Of(planned, checkId, ReadersOf(checkId));
        return spread;
    }

    /// <summary>The builds that have a word on a check, in any order.</summary>
    public IEnumerable<(BuildDigest Build, CheckWord Word)> ReadersOf(string checkId) =>
        (_readers.GetValueOrDefault(checkId) ?? []).Select(build => (build, build.Words[checkId]));

    private IReadOnlyList<string> Shared(PlanFixed plan)
    {
        if (!_plans.TryGetValue(plan.PlanFingerprint, out var checks) || !checks.SequenceEqual(plan.CheckIds))
            _plans[plan.PlanFingerprint] = checks = plan.CheckIds;
        return checks;
    }
}
