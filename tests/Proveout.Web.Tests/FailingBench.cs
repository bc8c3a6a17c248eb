using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Web.Tests;

/// <summary>A bench whose journal cannot be read.</summary>
internal sealed class FailingBench(IBench inner) : IBench
{
    public const string Secret = "journal-file-is-locked";

    public IReadOnlyList<MachineSummary> Machines() => inner.Machines();

    public Task<IReadOnlyList<BuildSummary>> BuildsAsync(CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BuildSummary>> StartAsync(StartBuild request, CancellationToken cancellation) => inner.StartAsync(request, cancellation);

    public Task<BenchState?> StateAsync(string buildId, CancellationToken cancellation) => throw Failure();

    public Task<BenchStep?> StepAsync(string buildId, string checkId, CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BenchState>> EnterReadingAsync(string buildId, ReadingRequest request, CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BenchState>> SkipAsync(string buildId, SkipRequest request, CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BenchState>> NoteDeviationAsync(string buildId, DeviationRequest request, CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BenchState>> NoteMistakeAsync(string buildId, MistakeRequest request, CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BenchState>> AttachPhotoAsync(string buildId, PhotoRequest request, CancellationToken cancellation) => throw Failure();

    public Task<PhotoContent?> PhotoAsync(string buildId, string sha256, CancellationToken cancellation) => throw Failure();

    public Task<Outcome<BenchState>> SignOffAsync(string buildId, SignOffRequest request, CancellationToken cancellation) => throw Failure();

    public IAsyncEnumerable<long> WatchAsync(string buildId, long afterSequence, CancellationToken cancellation) => throw Failure();

    public Task<string?> ProbeDrawingAsync(string buildId, string checkId, CancellationToken cancellation) => throw Failure();

    public IReadOnlyList<KindCoverage> Coverage(string machineId, IEnumerable<string> checkIds) => throw Failure();

    public PlanView? Plan(string machineId) => throw Failure();

    public Outcome<TriplesView>? Threes(string machineId) => throw Failure();

    public EnergisingView? Energising(string machineId) => throw Failure();

    public WalkView? Walk(string machineId) => throw Failure();

    public AskView? Ask(string machineId, IReadOnlyDictionary<string, bool> answers) => throw Failure();

    private static InvalidOperationException Failure() => new(Secret);
}
