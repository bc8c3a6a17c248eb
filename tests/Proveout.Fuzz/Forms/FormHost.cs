using System.Net;
using Proveout.Journal;
using Proveout.Web;
using Proveout.Workshop;

namespace Proveout.Fuzz;

/// <summary>The real bench on a free port of this computer, over a sample and a journal in a temporary folder, with one build started.</summary>
internal sealed class FormHost
{
    private static readonly Lazy<FormHost> Shared = new(() => Task.Run(() => StartAsync(Path.Combine(Corpus.Root, "samples", "pennywort"), "P-1")).GetAwaiter().GetResult());

    private readonly HttpClient _client;
    private readonly string _build;

    private FormHost(HttpClient client, string build) => (_client, _build) = (client, build);

    /// <summary>The one of this process; started when it is first asked for, and gone with the process.</summary>
    public static FormHost Running => Shared.Value;

    /// <summary>Reads a page, following where it leads.</summary>
    /// <param name="address">Its address; <c>/build</c> at the beginning stands for that of the build.</param>
    public HttpResponseMessage Get(string address) => Send(() => new(HttpMethod.Get, Full(address)));

    /// <summary>Posts a body.</summary>
    public HttpResponseMessage Post(string address, HttpContent body) => Send(() => new(HttpMethod.Post, Full(address)) { Content = body });

    private HttpResponseMessage Send(Func<HttpRequestMessage> request) => Task.Run(async () =>
    {
        using var message = request();
        return await _client.SendAsync(message);
    }).GetAwaiter().GetResult();

    private string Full(string address) => address.StartsWith("/build/", StringComparison.Ordinal) || address == "/build" ? $"/builds/{_build}{address["/build".Length..]}" : address;

    /// <summary>Starts one over a machine, with one build.</summary>
    public static async Task<FormHost> StartAsync(string machine, string serial)
    {
        var folder = Directory.CreateTempSubdirectory("proveout-forms-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        var (files, plans, clock) = (new MachineFiles(Path.Combine(Corpus.Root, "catalogue")), new PlanDesk(), TimeProvider.System);
        var journal = await SqliteJournal.OpenAsync(Path.Combine(folder, "builds.db"), clock);
        var places = new EditPlaces(Path.Combine(folder, "machines"), Path.Combine(Corpus.Root, "samples"));
        var shelf = new MachineShelf(files, [machine], places.OwnFolder);
        var records = new WorkshopRecords(journal);
        var bench = new Bench(shelf, plans, journal, records);
        var desks = new Desks(
            bench, new DesignDesk(shelf, plans), new ReceivingDesk(shelf, journal), new HandoverDesk(shelf, journal), new BookDesk(shelf, plans, bench, journal),
            new BuildsDesk(shelf, plans, journal, records))
        {
            Reports = new ReportCase(bench, journal, clock),
            Measuring = new MeasuringDesk(journal),
            Editing = new EditDesk(files, shelf, places, clock),
        };
        var started = await bench.StartAsync(new StartBuild(Path.GetFileName(machine), serial, serial, ""), default);
        var app = BenchHost.Build(new BenchHostOptions(), desks);
        await app.StartAsync();
#pragma warning disable CA2000 // Lives as long as the process.
        var client = new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new Uri(app.Urls.First()), Timeout = TimeSpan.FromMinutes(5) };
#pragma warning restore CA2000
        return new FormHost(client, started.Value!.Id);
    }
}
