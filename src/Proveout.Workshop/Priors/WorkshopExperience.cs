using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Gathers what the builds of a journal teach, once and again when a mistake is found.</summary>
/// <param name="shelf">The machines; builds of others teach nothing.</param>
/// <param name="desk">Plans them.</param>
/// <param name="records">The builds in digest.</param>
internal sealed class WorkshopExperience(MachineShelf shelf, PlanDesk desk, WorkshopRecords records)
{
    private readonly Dictionary<Guid, (int Recorded, BuildExperience Experience)> _gathered = [];
    private readonly Dictionary<string, int> _found = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _expected = new(StringComparer.Ordinal);
    private int _version = -1;
    private volatile bool _isFresh;

    /// <summary>What all builds but one teach.</summary>
    public async Task<LearnedPriors> OfOthersAsync(Guid build, CancellationToken cancellation)
    {
        if (!_isFresh)
            await GatherAsync(cancellation);
        lock (_gathered)
            return LearnedPriors.Of([_gathered.TryGetValue(build, out var own) ? AllBut(own.Experience) : AllBut(Nothing)]);
    }

    /// <summary>What all builds teach.</summary>
    public async Task<LearnedPriors> OfAllAsync(CancellationToken cancellation)
    {
        await GatherAsync(cancellation);
        lock (_gathered)
            return LearnedPriors.Of([AllBut(Nothing)]);
    }

    /// <summary>A mistake was found: gather anew when asked next.</summary>
    public void Forget() => _isFresh = false;

    private static BuildExperience Nothing { get; } = new(new Dictionary<string, int>(), new Dictionary<string, double>());

    // Machines are simulated for this only when some build records a mistake found, and before the digest is held up for it.
    private async Task GatherAsync(CancellationToken cancellation)
    {
        var (version, machines) = await records.LookAsync(
            digest => (digest.Version, digest.Version != _version && digest.NewestFirst.Any(build => build.Mistakes.Count > 0)
                ? digest.NewestFirst.Select(build => (build.Build.MachineFingerprint, build.Build.MachineName)).Distinct().ToArray()
                : []),
            cancellation);
        if (machines.Length > 0)
        {
            var planned = machines
                .Select(machine => (Machine: machine, Loaded: shelf.OfBuild(machine.MachineFingerprint, machine.MachineName)))
                .Where(pair => pair.Loaded is not null)
                .ToDictionary(pair => pair.Machine, pair => desk.Of(pair.Loaded!).Dictionary);
            version = await records.LookAsync(digest => Take(digest, planned), cancellation);
        }

        _version = version;
        _isFresh = true;
    }

    private int Take(WorkshopDigest digest, IReadOnlyDictionary<(string Fingerprint, string Name), FaultDictionary> planned)
    {
        lock (_gathered)
            foreach (var build in digest.NewestFirst)
            {
                var before = _gathered.GetValueOrDefault(build.Build.Id);
                if (before.Recorded == build.Recorded || !planned.TryGetValue((build.Build.MachineFingerprint, build.Build.MachineName), out var dictionary))
                    continue;
                var now = BuildExperience.Of(dictionary, build.Mistakes, build.Words.Where(word => !word.Value.IsSkipped).Select(word => word.Key));
                Add(before.Experience ?? Nothing, -1);
                Add(now, 1);
                _gathered[build.Build.Id] = (build.Recorded, now);
            }

        return digest.Version;
    }

    private void Add(BuildExperience build, int sign)
    {
        foreach (var (kind, number) in build.Found)
            _found[kind] = _found.GetValueOrDefault(kind) + (sign * number);
        foreach (var (kind, number) in build.Expected)
            _expected[kind] = _expected.GetValueOrDefault(kind) + (sign * number);
    }

    private BuildExperience AllBut(BuildExperience own) => new(
        _found.Select(kind => (kind.Key, Left: kind.Value - own.Found.GetValueOrDefault(kind.Key))).Where(kind => kind.Left > 0)
            .ToDictionary(kind => kind.Key, kind => kind.Left, StringComparer.Ordinal),
        // What is left of a sum by subtraction may end a rounding error below 0.
        _expected.ToDictionary(
            kind => kind.Key, kind => Math.Max(0, kind.Value - own.Expected.GetValueOrDefault(kind.Key)), StringComparer.Ordinal));
}
