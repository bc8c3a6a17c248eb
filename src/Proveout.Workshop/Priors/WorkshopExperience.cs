namespace Proveout.Workshop;

/// <summary>Gathers what the builds of a journal teach, once and again when a mistake is found.</summary>
/// <param name="shelf">The machines; builds of others teach nothing.</param>
/// <param name="desk">Plans them.</param>
/// <param name="records">The builds in digest.</param>
internal sealed class WorkshopExperience(MachineShelf shelf, PlanDesk desk, WorkshopRecords records)
{
    private volatile IReadOnlyDictionary<Guid, (int Recorded, BuildExperience Experience)> _gathered = new Dictionary<Guid, (int, BuildExperience)>();
    private volatile BuildExperience? _sum;
    private volatile int _version = -1;

    /// <summary>What all builds but one teach.</summary>
    public async Task<LearnedPriors> OfOthersAsync(Guid build, CancellationToken cancellation)
    {
        var sum = _sum ?? await GatherAsync(cancellation);
        return LearnedPriors.Of([_gathered.TryGetValue(build, out var own) ? Without(sum, own.Experience) : sum]);
    }

    /// <summary>What all builds teach.</summary>
    public async Task<LearnedPriors> OfAllAsync(CancellationToken cancellation) => LearnedPriors.Of([await GatherAsync(cancellation)]);

    /// <summary>A mistake was found: gather anew when asked next.</summary>
    public void Forget() => _sum = null;

    // Machines are simulated for this only when some build records a mistake found, and before the digest is held up for it.
    private async Task<BuildExperience> GatherAsync(CancellationToken cancellation)
    {
        var version = await records.LookAsync(digest => digest.Version, cancellation);
        if (version == _version && _sum is { } same)
            return same;
        var machines = await records.LookAsync(
            digest => digest.NewestFirst.Any(build => build.Mistakes.Count > 0)
                ? digest.NewestFirst.Select(build => (build.Build.MachineFingerprint, build.Build.MachineName)).Distinct().ToArray()
                : [],
            cancellation);
        var planned = machines
            .Select(machine => (Machine: machine, Loaded: shelf.OfBuild(machine.MachineFingerprint, machine.MachineName)))
            .Where(pair => pair.Loaded is not null)
            .ToDictionary(pair => pair.Machine, pair => desk.Of(pair.Loaded!).Dictionary);
        var before = _gathered;
        var gathered = await records.LookAsync(
            digest =>
            {
                var known = new Dictionary<Guid, (int Recorded, BuildExperience Experience)>();
                foreach (var build in digest.NewestFirst)
                    if (planned.TryGetValue((build.Build.MachineFingerprint, build.Build.MachineName), out var dictionary))
                        known[build.Build.Id] = before.TryGetValue(build.Build.Id, out var earlier) && earlier.Recorded == build.Recorded
                            ? earlier
                            : (build.Recorded, BuildExperience.Of(dictionary, build.Mistakes, build.Words.Where(word => !word.Value.IsSkipped).Select(word => word.Key)));
                return known;
            },
            cancellation);
        _gathered = gathered;
        _version = version;
        return _sum = Sum(gathered.Values.Select(build => build.Experience));
    }

    private static BuildExperience Sum(IEnumerable<BuildExperience> builds)
    {
        var (found, expected) = (new Dictionary<string, int>(StringComparer.Ordinal), new Dictionary<string, double>(StringComparer.Ordinal));
        foreach (var build in builds)
        {
            foreach (var (kind, number) in build.Found)
                found[kind] = found.GetValueOrDefault(kind) + number;
            foreach (var (kind, number) in build.Expected)
                expected[kind] = expected.GetValueOrDefault(kind) + number;
        }

        return new(found, expected);
    }

    private static BuildExperience Without(BuildExperience sum, BuildExperience own) => new(
        sum.Found.Select(kind => (kind.Key, Left: kind.Value - own.Found.GetValueOrDefault(kind.Key))).Where(kind => kind.Left > 0)
            .ToDictionary(kind => kind.Key, kind => kind.Left, StringComparer.Ordinal),
        // What is left of a sum by subtraction may end a rounding error below 0.
        sum.Expected.ToDictionary(
            kind => kind.Key, kind => Math.Max(0, kind.Value - own.Expected.GetValueOrDefault(kind.Key)), StringComparer.Ordinal));
}
