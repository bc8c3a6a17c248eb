using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Gathers what the builds of a journal teach: at first, at once when a mistake is found here, and soon after one is found through another server.</summary>
/// <param name="shelf">The machines; builds of others teach nothing.</param>
/// <param name="desk">Plans them.</param>
/// <param name="records">The builds in digest.</param>
/// <param name="clock">Says when to look for news.</param>
internal sealed class WorkshopExperience(MachineShelf shelf, PlanDesk desk, WorkshopRecords records, TimeProvider clock)
{
    /// <summary>How long news from another server may wait: prompt for a person at the bench, and however many read pages, the journal is asked once.</summary>
    internal static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    private readonly Dictionary<Guid, (int Recorded, BuildExperience Experience)> _gathered = [];
    private readonly Dictionary<string, int> _found = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _expected = new(StringComparer.Ordinal);
    private int _version = -1;
    private volatile bool _isFresh;
    private volatile int _foundVersion;
    private long _looked;

    /// <summary>Reads what is new when it is time to, and says which findings are known: the number grows when a mistake is added.</summary>
    public async Task<int> FreshAsync(CancellationToken cancellation)
    {
        if (!_isFresh || clock.GetElapsedTime(Interlocked.Read(ref _looked)) >= Patience)
            await GatherAsync(cancellation);
        return _foundVersion;
    }

    /// <summary>What all builds but one teach.</summary>
    public async Task<LearnedPriors> OfOthersAsync(Guid build, CancellationToken cancellation)
    {
        await FreshAsync(cancellation);
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
        // Before the look: what is recorded during it is found the next time, and who asks meanwhile does not look too.
        Interlocked.Exchange(ref _looked, clock.GetTimestamp());
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
                if (now.Found.Values.Sum() != (before.Experience ?? Nothing).Found.Values.Sum())
                    _foundVersion++;
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
