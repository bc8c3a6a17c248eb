using System.Net;
using Microsoft.AspNetCore.Builder;
using Proveout.Web;
using Proveout.Web.Tests;
using Proveout.Workshop;

namespace Proveout.Cli.Tests;

/// <summary>Who comes in at two servers on one database, as behind a distributor of load.</summary>
public sealed class TwoServersAccessTests(DatabaseTests.OwnServer own) : IClassFixture<DatabaseTests.OwnServer>, IAsyncLifetime
{
    private const string Ida = "Ida Brandt";
    private const string Password = "seven herons wade upstream";
    private readonly List<(WebApplication App, Workplace Workplace)> _servers = [];
    private string _address = "";

    public async ValueTask InitializeAsync()
    {
        Assert.SkipUnless(own.Server is not null, "PostgreSQL is not installed; ./test installs it where it may.");
        _address = own.Server!.NewDatabase();
        await StartAsync();
        await StartAsync();
        Assert.Equal(0, (await Run.WithInputAsync(Password + "\n", "people", "add", Ida, "--role", "builder", "--journal", _address)).Exit);
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
    public async Task Who_signed_in_at_one_works_at_the_other_and_is_out_there_when_out_here()
    {
        // Cookies go by the host and not by the port, so that the visitor shows both servers the same.
        using var visitor = new Visitor(Server(0));
        Assert.Equal(HttpStatusCode.SeeOther, (await SignInAsync(visitor, 0, Password)).Status);
        var there = await visitor.GetAsync(At(1, "/devices"));
        Assert.Equal(HttpStatusCode.OK, there.Status);
        Assert.Contains(Ida, there.Text, StringComparison.Ordinal);
        var before = visitor.Cookies["session"]!.Value;
        Assert.Equal(HttpStatusCode.SeeOther, (await visitor.PostAsync(At(1, "/sign-out"), there.HiddenFields("sign-out"))).Status);
        using var late = new Visitor(Server(0));
        late.Client.DefaultRequestHeaders.Add("Cookie", $"session={before}");
        Assert.StartsWith("/sign-in", (await late.GetAsync("/")).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_is_removed_at_the_terminal_is_out_at_both_at_once()
    {
        using var visitor = new Visitor(Server(0));
        await SignInAsync(visitor, 0, Password);
        Assert.Equal(0, (await Run.OfAsync("people", "role", Ida, "reader", "--journal", _address)).Exit);
        Assert.Contains("reader", (await visitor.GetAsync(At(1, "/devices"))).Text, StringComparison.Ordinal);
        Assert.Equal(0, (await Run.OfAsync("people", "remove", Ida, "--journal", _address)).Exit);
        foreach (var server in new[] { 0, 1 })
            Assert.Equal(HttpStatusCode.SeeOther, (await visitor.GetAsync(At(server, "/"))).Status);
    }

    [Fact]
    public async Task Who_typed_wrong_passwords_at_one_waits_at_the_other()
    {
        using var visitor = new Visitor(Server(0));
        foreach (var server in new[] { 0, 1, 0 })
            Assert.Equal(HttpStatusCode.UnprocessableEntity, (await SignInAsync(visitor, server, "seven herons wade downstream")).Status);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await SignInAsync(visitor, 1, Password)).Status);
    }

    [Fact]
    public async Task Of_one_join_code_typed_at_both_at_the_same_moment_one_is_let_in()
    {
        var shown = await Run.OfAsync("people", "join", "Tove Lund", "--role", "checker", "--journal", _address);
        var code = shown.Output.Split('\n')[0]["Code: ".Length..].Trim();
        using var here = new Visitor(Server(0));
        using var there = new Visitor(Server(1));
        var pages = await Task.WhenAll(JoinAsync(here, 0, code), JoinAsync(there, 1, code));
        Assert.Single(pages, page => page.Status == HttpStatusCode.SeeOther);
        Assert.Single(pages, page => page.Status == HttpStatusCode.UnprocessableEntity);
    }

    [Fact]
    public async Task A_database_that_is_away_lets_nobody_in_with_a_sentence_and_is_taken_up_again()
    {
        using var visitor = new Visitor(Server(0));
        await SignInAsync(visitor, 0, Password);
        using var stranger = new Visitor(Server(1));
        var form = (await stranger.GetAsync("/sign-in")).HiddenFields("sign-in");
        Page[] pages;
        Run listed;
        own.Server!.Stop();
        try
        {
            pages =
            [
                await visitor.GetAsync("/"), await stranger.GetAsync("/sign-in"), await stranger.GetAsync("/join"),
                await stranger.PostAsync("/sign-in", Visitor.Fill(form, ("name", Ida), ("password", Password))),
            ];
            listed = await Run.OfAsync("people", "list", "--journal", _address);
        }
        finally
        {
            own.Server.Start();
        }

        Assert.All(pages, page => Assert.Equal(HttpStatusCode.ServiceUnavailable, page.Status));
        Assert.All(pages, page => Assert.Contains("The bench cannot look up who may come in, so it lets nobody in", page.Text, StringComparison.Ordinal));
        Assert.All(pages, page => Assert.DoesNotContain("Npgsql", page.Html, StringComparison.Ordinal));
        Assert.Equal((2, ""), (listed.Exit, listed.Output));
        Assert.Contains("cannot be reached", listed.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", listed.Error, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync(At(1, "/"))).Status);
    }

    private Uri Server(int number) => new(_servers[number].App.Urls.First());

    private string At(int server, string address) => new Uri(Server(server), address).ToString();

    private Task<Page> SignInAsync(Visitor visitor, int server, string password) => visitor.SendAsync(At(server, "/sign-in"), "sign-in", ("name", Ida), ("password", password));

    private Task<Page> JoinAsync(Visitor visitor, int server, string code) => visitor.SendAsync(At(server, "/join"), "join", ("code", code));

    private async Task StartAsync()
    {
        var workplace = await Workplace.OpenAsync(new MachineFiles(Places.Catalogue), [Places.MachineAt("pennywort")], _address, default);
        var keeping = AccessKeeping.In(workplace.Journal)!;
        var app = BenchHost.Build(new BenchHostOptions { Opening = new NetworkOpening(keeping.Store, []) { Tally = keeping.Tally } }, workplace.Desks);
        _servers.Add((app, workplace));
        await app.StartAsync();
    }
}
