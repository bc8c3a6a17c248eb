using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Every build of a journal in digest.</summary>
internal sealed class WorkshopDigest
{
    private readonly Dictionary<string, MachineDigest> _machines = new(StringComparer.Ordinal);
    private readonly Dictionary<Guid, BuildDigest> _builds = [];
    private readonly Dictionary<Guid, int> _known = [];
    private readonly Dictionary<Guid, string> _damage = [];
    private BuildDigest[]? _newestFirst;

    /// <summary>How many entries of each build are in here, or could not be read.</summary>
    public IReadOnlyDictionary<Guid, int> Known => _known;

    /// <summary>Why a build, or some of its entries, could not be read.</summary>
    public IReadOnlyDictionary<Guid, string> Damage => _damage;

    /// <summary>Grows with each piece of news.</summary>
    public int Version { get; private set; }

    /// <summary>All builds, newest first.</summary>
    public IReadOnlyList<BuildDigest> NewestFirst =>
        _newestFirst ??= [.. _builds.Values.OrderByDescending(build => build.Build.Started).ThenByDescending(build => build.Build.Id)];

    /// <summary>The builds of a machine.</summary>
    public MachineDigest OfMachine(string name) => _machines.GetValueOrDefault(name) ?? new MachineDigest();

    /// <summary>A build, or null.</summary>
    public BuildDigest? Find(Guid build) => _builds.GetValueOrDefault(build);

    public void Take(BuildNews news)
    {
        if (_known.TryGetValue(news.BuildId, out var known) && known >= news.Recorded)
            return;
        _known[news.BuildId] = news.Recorded;
        Version++;
        if (news.Damage.Length > 0)
            _damage[news.BuildId] = news.Damage;
        if (news.Build is null)
            return;
        if (!_machines.TryGetValue(news.Build.MachineName, out var machine))
            _machines.Add(news.Build.MachineName, machine = new MachineDigest());
        if (!_builds.TryGetValue(news.BuildId, out var build))
        {
            _builds.Add(news.BuildId, build = new BuildDigest(news.Build, machine.CheckNames));
            machine.Add(build);
            _newestFirst = null;
        }

        foreach (var entry in news.Entries)
            machine.Take(build, entry);
    }
}
