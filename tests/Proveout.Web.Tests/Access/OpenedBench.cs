using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Proveout.Web.Tests.Samples;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Access;

/// <summary>A bench that asks who comes in, with one build, on a free port of this computer.</summary>
internal sealed class OpenedBench : IAsyncDisposable
{
    public const string Password = "seven herons wade upstream";

    private readonly SampleBench _samples;
    private readonly string _folder = Directory.CreateTempSubdirectory("proveout-access-").FullName;
    private WebApplication _app = null!;

    private OpenedBench(SampleBench samples) => (_samples, Store) = (samples, new AccessFile(Path.Combine(_folder, "builds.db.access")));

    public AccessFile Store { get; }

    public OwnClock Clock { get; } = new();

    public PeopleDesk People => new(Store, Clock);

    public BuildSummary Build { get; private set; } = null!;

    public IBench Bench => _samples.Bench;

    public string Record => $"/builds/{Build.Id}/record";

    public ListLog Log { get; } = new();

    public Uri Address => new(_app.Urls.First());

    public IReadOnlyList<RouteEndpoint> Endpoints => [.. _app.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()];

    /// <summary>Starts a bench.</summary>
    /// <param name="with">What its opening has besides.</param>
    /// <param name="stray">An address mapped outside of the group that gives addresses their roles, as a careless change would.</param>
    public static async Task<OpenedBench> StartAsync(Func<NetworkOpening, NetworkOpening>? with = null, string? stray = null)
    {
        var samples = await SampleBench.OpenAsync();
        var opened = new OpenedBench(samples);
        opened.Build = (await samples.Bench.StartAsync(new StartBuild(SampleBench.Machine, "oven-7", "Mara Lindt", ""), default)).Value!;
        await opened.StartHostAsync(with, stray);
        return opened;
    }

    /// <summary>Stops the bench and starts it anew over the same files.</summary>
    public async Task RestartAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        await StartHostAsync(null);
    }

    public void Add(string name, AccessRole role) => Assert.NotNull(People.Add(name, role, Password).Value);

    public Visitor Visit() => new(Address);

    /// <summary>A visitor who signed in.</summary>
    public async Task<Visitor> VisitAsync(string name)
    {
        var visitor = Visit();
        var page = await visitor.SendAsync("/sign-in", "sign-in", ("name", name), ("password", Password));
        Assert.Equal(HttpStatusCode.SeeOther, page.Status);
        return visitor;
    }

    /// <summary>An address as a route has it, with this build and this machine in it.</summary>
    public string Filled(RouteEndpoint endpoint) => "/" + endpoint.RoutePattern.RawText!.TrimStart('/')
        .Replace("{buildId}", Build.Id, StringComparison.Ordinal).Replace("{machineId}", Build.MachineId, StringComparison.Ordinal)
        .Replace("{sheet:int}", "1", StringComparison.Ordinal).Replace("{**address}", "nothing", StringComparison.Ordinal)
        .Replace('{', 'x').Replace('}', 'x');

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
        await _samples.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }

    private async Task StartHostAsync(Func<NetworkOpening, NetworkOpening>? with, string? stray = null)
    {
        var opening = new NetworkOpening(Store, ["bench.example"]) { Clock = Clock };
        _app = BenchHost.Build(new BenchHostOptions { Opening = with?.Invoke(opening) ?? opening }, _samples.Desks);
        _app.Services.GetRequiredService<ILoggerFactory>().AddProvider(Log);
        if (stray is not null)
            _app.MapGet(stray, () => "stray data");
        await _app.StartAsync();
    }
}
