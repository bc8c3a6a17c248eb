using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Gathers what the builds of a journal teach, once and again when a mistake is found.</summary>
/// <param name="shelf">The machines; builds of others teach nothing.</param>
/// <param name="desk">Plans them.</param>
/// <param name="journal">Keeps the builds.</param>
internal sealed class WorkshopExperience(MachineShelf shelf, PlanDesk desk, IJournal journal)
{
    private volatile IReadOnlyDictionary<Guid, BuildExperience>? _known;

    /// <summary>What all builds but one teach.</summary>
    public async Task<LearnedPriors> OfOthersAsync(Guid build, CancellationToken cancellation)
    {
        var known = _known ??= await GatherAsync(cancellation);
        return LearnedPriors.Of([.. known.Where(other => other.Key != build).Select(other => other.Value)]);
    }

    /// <summary>A mistake was found: gather anew when asked next.</summary>
    public void Forget() => _known = null;

    // Machines are simulated for this only when some build records a mistake found.
    private async Task<IReadOnlyDictionary<Guid, BuildExperience>> GatherAsync(CancellationToken cancellation)
    {
        var entries = new Dictionary<Build, IReadOnlyList<Entry>>();
        foreach (var build in await journal.ListBuildsAsync(cancellation))
            entries[build] = await journal.ReadAsync(build.Id, 0, cancellation);
        var known = new Dictionary<Guid, BuildExperience>();
        if (entries.Values.Any(ofBuild => ofBuild.Any(entry => entry.Content is MistakeFound)))
            foreach (var (build, ofBuild) in entries)
                if (shelf.OfBuild(build.MachineFingerprint, build.MachineName) is { } machine)
                    known[build.Id] = BuildExperience.Of(desk.Of(machine).Dictionary, ofBuild);
        return known;
    }
}
