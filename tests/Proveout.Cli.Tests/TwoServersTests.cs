using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Npgsql;
using Proveout.Journal.Trials.Servers;
using Proveout.Web;
using Proveout.Workshop;

namespace Proveout.Cli.Tests;

/// <summary>Two servers on one database, as behind a distributor of load.</summary>
public sealed class TwoServersTests(DatabaseTests.OwnServer own) : IClassFixture<DatabaseTests.OwnServer>, IAsyncLifetime
{
    private readonly List<(WebApplication App, Workplace Workplace)> _servers = [];
    private string _address = "";

    public ValueTask InitializeAsync()
    {
        Assert.SkipUnless(own.Server is not null, "PostgreSQL is not installed; ./test installs it where it may.");
        _address = own.Server!.NewDatabase();
        return ValueTask.CompletedTask;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var (app, workplace) in _servers)
        {
            await app.StopAsync();
            await app.DisposeAsync();
            await workplace.DisposeAsync();
        }
    }

    [Fact]
    public async Task A_form_that_one_gave_out_is_taken_by_the_other_and_by_one_started_later()
    {
        // At the same moment, so that both find no key.
        var both = await Task.WhenAll(StartAsync(), StartAsync());
        var (form, cookie) = await FormOfAsync(both[0]);
        foreach (var (server, serial) in new[] { (both[1], "K-1"), (both[0], "K-2"), (await StartAsync(), "K-3") })
        {
            var answer = await SendAsync(server, form, cookie, serial);
            Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        }
    }

    [Fact]
    public async Task A_form_of_a_server_on_another_database_is_not_taken()
    {
        var here = await StartAsync();
        var (form, cookie) = await FormOfAsync(here);
        _address = own.Server!.NewDatabase();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SendAsync(await StartAsync(), form, cookie, "K-1")).StatusCode);
    }

    [Fact]
    public async Task A_mistake_entered_through_one_changes_the_shares_of_suspects_at_the_other_without_a_restart()
    {
        await StartAsync();
        await StartAsync();
        var (here, there) = (_servers[0].Workplace.Bench, _servers[1].Workplace.Bench);
        var found = (await there.StartAsync(new StartBuild("pennywort", "1", "Ada", ""), default)).Value!;
        var open = (await here.StartAsync(new StartBuild("pennywort", "2", "Ada", ""), default)).Value!;
        var check = (await here.StateAsync(open.Id, default))!.Steps.First(step => step.Check.Expectation.High < 2).Check.Id;
        var before = (await here.EnterReadingAsync(open.Id, new(check, "OL", "Ada", Guid.NewGuid()), default)).Value!.Suspects;
        var rare = before[^1].FaultIds[0];

        Assert.Empty((await there.NoteMistakeAsync(found.Id, new(rare, "Mended.", "Ada", Guid.NewGuid()), default)).Diagnostics);

        // At most five seconds, and time for a slow computer.
        var patience = DateTime.UtcNow.AddSeconds(60);
        double after;
        do
        {
            await Task.Delay(250);
            after = ShareOf(rare, (await here.StateAsync(open.Id, default))!.Suspects);
        }
        while (after <= ShareOf(rare, before) && DateTime.UtcNow < patience);
        Assert.True(after > ShareOf(rare, before));
    }

    [Theory]
    [InlineData("UPDATE proveout_servers.form_keys SET content = 'another'")]
    [InlineData("DELETE FROM proveout_servers.form_keys")]
    [InlineData("TRUNCATE proveout_servers.form_keys")]
    public async Task A_key_is_never_changed_or_removed(string statement)
    {
        await StartAsync();
        var refusal = Assert.Throws<PostgresException>(() => Execute(statement));
        Assert.Contains("a key of forms is never changed or removed", refusal.MessageText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Keys_are_read_by_the_owner_of_the_tables_alone_and_are_no_part_of_the_record()
    {
        await StartAsync();
        Execute("DO $$ BEGIN CREATE ROLE stranger; EXCEPTION WHEN duplicate_object THEN NULL; END $$");
        Assert.Throws<PostgresException>(() => Execute("SET ROLE stranger; SELECT content FROM proveout_servers.form_keys"));
        var verified = await Run.OfAsync("verify", "--all", "--journal", _address);
        Assert.Equal(0, verified.Exit);
    }

    private static double ShareOf(string fault, IReadOnlyList<Suspect> suspects) => suspects.Where(suspect => suspect.FaultIds.Contains(fault)).Sum(suspect => suspect.Probability);

    private static async Task<(Dictionary<string, string> Form, string Cookie)> FormOfAsync(Uri server)
    {
        using var handler = new HttpClientHandler { UseCookies = false };
        using var client = new HttpClient(handler) { BaseAddress = server };
        using var answer = await client.GetAsync("/");
        var page = await answer.Content.ReadAsStringAsync();
        var start = page.IndexOf("data-form=\"start\"", StringComparison.Ordinal);
        var fields = Regex.Matches(page[start..page.IndexOf("</form>", start, StringComparison.Ordinal)], "<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");
        return (fields.ToDictionary(field => field.Groups[1].Value, field => WebUtility.HtmlDecode(field.Groups[2].Value)), string.Join("; ", answer.Headers.GetValues("Set-Cookie").Select(cookie => cookie.Split(';')[0])));
    }

    private static async Task<HttpResponseMessage> SendAsync(Uri server, Dictionary<string, string> form, string cookie, string serial)
    {
        using var handler = new HttpClientHandler { UseCookies = false, AllowAutoRedirect = false };
        using var client = new HttpClient(handler) { BaseAddress = server };
        client.DefaultRequestHeaders.Add("Cookie", cookie);
        var fields = new Dictionary<string, string>(form) { ["machine"] = "pennywort", ["serial"] = serial, ["builder"] = "Ada Example", ["key"] = Guid.NewGuid().ToString() };
        return await client.PostAsync("/", new FormUrlEncodedContent(fields));
    }

    private void Execute(string sql) => own.Server!.Execute(PostgresServer.NameIn(_address), sql);

    private async Task<Uri> StartAsync()
    {
        var workplace = await Workplace.OpenAsync(new MachineFiles(Places.Catalogue), [Places.MachineAt("pennywort")], _address, default);
        var app = BenchHost.Build(new BenchHostOptions(), workplace.Desks);
        lock (_servers)
            _servers.Add((app, workplace));
        await app.StartAsync();
        return new Uri(app.Urls.First());
    }
}
