using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The bench: walks one build of one machine through its check plan and keeps the journal.</summary>
/// <remarks>Holds no state of its own: every answer is computed from the machine, its plan and the journal's entries.</remarks>
public interface IBench
{
    /// <summary>Machines that a build can be started from.</summary>
    IReadOnlyList<MachineSummary> Machines();

    /// <summary>Builds, newest first.</summary>
    Task<IReadOnlyList<BuildSummary>> BuildsAsync(CancellationToken cancellation);

    /// <summary>Starts a build of a machine.</summary>
    Task<Outcome<BuildSummary>> StartAsync(StartBuild request, CancellationToken cancellation);

    /// <summary>Where a build stands; null when there is no such build.</summary>
    Task<BenchState?> StateAsync(string buildId, CancellationToken cancellation);

    /// <summary>The step of any check that the machine has, also of one that is not among the build's steps now; null when there is none.</summary>
    Task<BenchStep?> StepAsync(string buildId, string checkId, CancellationToken cancellation);

    /// <summary>Enters a reading for a check, or corrects the one that is there; the text is judged at once.</summary>
    Task<Outcome<BenchState>> EnterReadingAsync(string buildId, ReadingRequest request, CancellationToken cancellation);

    /// <summary>Leaves a check out, with a reason.</summary>
    Task<Outcome<BenchState>> SkipAsync(string buildId, SkipRequest request, CancellationToken cancellation);

    /// <summary>Notes that the build differs from the guide or the machine file.</summary>
    Task<Outcome<BenchState>> NoteDeviationAsync(string buildId, DeviationRequest request, CancellationToken cancellation);

    /// <summary>Notes that a mistake was found and mended, so that the next builds know how often its kind is made.</summary>
    Task<Outcome<BenchState>> NoteMistakeAsync(string buildId, MistakeRequest request, CancellationToken cancellation);

    /// <summary>Attaches a photograph.</summary>
    Task<Outcome<BenchState>> AttachPhotoAsync(string buildId, PhotoRequest request, CancellationToken cancellation);

    /// <summary>The bytes of a photograph, or null.</summary>
    Task<PhotoContent?> PhotoAsync(string buildId, string sha256, CancellationToken cancellation);

    /// <summary>Signs the record off.</summary>
    Task<Outcome<BenchState>> SignOffAsync(string buildId, SignOffRequest request, CancellationToken cancellation);

    /// <summary>Yields the journal's last sequence number whenever it grows beyond <paramref name="afterSequence"/>, until cancelled.</summary>
    IAsyncEnumerable<long> WatchAsync(string buildId, long afterSequence, CancellationToken cancellation);

    /// <summary>The drawing of the places to touch for a check, as an SVG document; null when there is no such check.</summary>
    Task<string?> ProbeDrawingAsync(string buildId, string checkId, CancellationToken cancellation);

    /// <summary>Faults of a machine by kind, and how many of them the given checks surely catch; empty when there is no such machine.</summary>
    IReadOnlyList<KindCoverage> Coverage(string machineId, IEnumerable<string> checkIds);

    /// <summary>The plan of a machine with its coverage; null when there is no such machine.</summary>
    PlanView? Plan(string machineId);

    /// <summary>What the plan of a machine does against three mistakes made together, or why that is not worked out for a page; null when there is no such machine.</summary>
    Outcome<TriplesView>? Threes(string machineId);

    /// <summary>The order in which a machine is energised for the first time; null when there is no such machine.</summary>
    EnergisingView? Energising(string machineId);

    /// <summary>The walk round a machine; null when there is no such machine.</summary>
    WalkView? Walk(string machineId);

    /// <summary>What symptoms say of a machine; null when there is no such machine.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="answers">Identifier of each symptom reported, and whether it is not as it should be.</param>
    AskView? Ask(string machineId, IReadOnlyDictionary<string, bool> answers);
}
