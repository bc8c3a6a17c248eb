using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Web.Tests.InMemory;

/// <summary>A bench that lives in memory and knows one machine.</summary>
internal sealed class InMemoryBench : IBench
{
    private readonly ConcurrentDictionary<string, InMemoryBuild> _builds = new();

    public IReadOnlyList<MachineSummary> Machines() => [OvenPlan.Machine];

    public Task<IReadOnlyList<BuildSummary>> BuildsAsync(CancellationToken cancellation) =>
        Task.FromResult<IReadOnlyList<BuildSummary>>([.. _builds.Values.Select(build => build.Summary).OrderByDescending(build => build.Started)]);

    public Task<Outcome<BuildSummary>> StartAsync(StartBuild request, CancellationToken cancellation)
    {
        if (request.MachineId != OvenPlan.Machine.Id)
            return Task.FromResult(Refuse<BuildSummary>("unknown-machine", $"There is no machine {request.MachineId}.", "Choose one that is listed."));
        var serial = request.Serial.Length > 0 ? request.Serial : $"oven-{_builds.Count + 1}";
        var id = $"build-{_builds.Count + 1}";
        var build = new BuildSummary(id, serial, OvenPlan.Machine.Id, OvenPlan.Machine.Name, request.Builder, Clock(_builds.Count));
        _builds[id] = new InMemoryBuild(build);
        return Task.FromResult(Outcome.Of(build));
    }

    public Task<BenchState?> StateAsync(string buildId, CancellationToken cancellation) =>
        Task.FromResult(_builds.TryGetValue(buildId, out var build) ? build.State() : null);

    public Task<Outcome<BenchState>> EnterReadingAsync(string buildId, ReadingRequest request, CancellationToken cancellation) =>
        Task.FromResult(request.Text != "-" && TypedReading.Parse(request.Text) is null
            ? Refuse<BenchState>("bad-reading", $"'{request.Text}' is not a reading.", "Type a number such as 0.3 or 4k7, or OL, open or -.")
            : Outcome.Of(_builds[buildId].Add(request.Key, build => build.Readings[request.CheckId] = (request.Text, request.Person))));

    public Task<Outcome<BenchState>> SkipAsync(string buildId, SkipRequest request, CancellationToken cancellation) =>
        Task.FromResult(Outcome.Of(_builds[buildId].Add(request.Key, build => build.Skips[request.CheckId] = (request.Reason, request.Person))));

    public Task<Outcome<BenchState>> NoteDeviationAsync(string buildId, DeviationRequest request, CancellationToken cancellation) =>
        Task.FromResult(Outcome.Of(_builds[buildId].Add(request.Key, build =>
            build.Notes.Add(new(build.Sequence, Clock(build.Sequence), request.Person, request.Subject, request.Note, null)))));

    public Task<Outcome<BenchState>> AttachPhotoAsync(string buildId, PhotoRequest request, CancellationToken cancellation)
    {
        var sha256 = Convert.ToHexStringLower(SHA256.HashData(request.Bytes.Span));
        return Task.FromResult(Outcome.Of(_builds[buildId].Add(request.Key, build =>
        {
            build.Photos[sha256] = new(request.ContentType, request.Bytes);
            build.Notes.Add(new(build.Sequence, Clock(build.Sequence), request.Person, request.Subject, request.Caption, sha256));
        })));
    }

    public Task<PhotoContent?> PhotoAsync(string buildId, string sha256, CancellationToken cancellation) =>
        Task.FromResult(_builds.TryGetValue(buildId, out var build) ? build.Photos.GetValueOrDefault(sha256) : null);

    public Task<Outcome<BenchState>> SignOffAsync(string buildId, SignOffRequest request, CancellationToken cancellation) =>
        Task.FromResult(Outcome.Of(_builds[buildId].Add(request.Key, build =>
            build.Signatures.Add(new(build.Sequence, Clock(build.Sequence), request.Person, request.Role, request.Statement)))));

    public async IAsyncEnumerable<long> WatchAsync(string buildId, long afterSequence, [EnumeratorCancellation] CancellationToken cancellation)
    {
        while (true)
        {
            afterSequence = await _builds[buildId].GrowsBeyondAsync(afterSequence, cancellation);
            yield return afterSequence;
        }
    }

    public Task<string?> ProbeDrawingAsync(string buildId, string checkId, CancellationToken cancellation) =>
        Task.FromResult<string?>("""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 120" role="img"><title>The two places to touch</title>
            <rect x="10" y="20" width="110" height="80" rx="6" style="fill:none;stroke:currentColor" stroke-width="2"/>
            <rect x="200" y="20" width="110" height="80" rx="6" style="fill:none;stroke:currentColor" stroke-width="2"/>
            <circle cx="98" cy="60" r="10" style="fill:var(--lead-red, #c62828);stroke:currentColor" stroke-width="2"/>
            <rect x="212" y="50" width="20" height="20" style="fill:var(--lead-black, #16181d);stroke:currentColor" stroke-width="2"/>
            <script>alert(1)</script></svg>
            """);

    public PlanView? Plan(string machineId) => machineId == OvenPlan.Machine.Id ? OvenPlan.View() : null;

    private static DateTimeOffset Clock(long minutes) => new DateTimeOffset(2031, 3, 4, 9, 0, 0, TimeSpan.Zero).AddMinutes(minutes);

    private static Outcome<T> Refuse<T>(string rule, string message, string mend)
        where T : class => Outcome.Refused<T>([new Diagnostic(rule, new SourcePlace("form", 0, 0), message, mend)]);
}
