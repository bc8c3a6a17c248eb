using System.Net;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Access;
using Proveout.Workshop;

namespace Proveout.Web.Tests.Access;

/// <summary>Every address that the bench has, whoever adds one: who gets where.</summary>
public sealed class EndpointWalkTests
{
    // What does not ask who comes: nothing of the workshop is behind it.
    private static readonly string[] Open = ["GET /assets/{hash}/{name}", "GET /health/live", "GET /health/ready", "GET /join", "GET /manifest.webmanifest", "GET /offline", "GET /sign-in", "GET /worker.js", "POST /join", "POST /sign-in"];

    // What is sent without entering anything: the person's own ways in.
    private static readonly string[] Own = ["POST /devices", "POST /second-factor", "POST /sign-out"];

    [Fact]
    public async Task Every_address_says_what_it_asks_for()
    {
        await using var bench = await OpenedBench.StartAsync();
        Assert.True(bench.Endpoints.Count > 50);
        Assert.Empty(bench.Endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<NeedsPermission>() is null).Select(Name));
    }

    [Fact]
    public async Task Only_the_way_in_and_the_stylesheet_are_open()
    {
        await using var bench = await OpenedBench.StartAsync();
        Assert.Equal(Open.Order(StringComparer.Ordinal), NamesOf(bench, Permission.Open));
    }

    [Fact]
    public async Task What_is_sent_needs_a_builder_but_for_signatures_and_ones_own_sessions()
    {
        await using var bench = await OpenedBench.StartAsync();
        Assert.Equal(["POST /builds/{buildId}/record/sign-off"], NamesOf(bench, Permission.Sign));
        Assert.Equal(Own, NamesOf(bench, Permission.See).Where(name => name.StartsWith("POST", StringComparison.Ordinal)));
        Assert.All(NamesOf(bench, Permission.Enter), name => Assert.StartsWith("POST", name, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nobody_sees_or_sends_anything_without_signing_in()
    {
        await using var bench = await OpenedBench.StartAsync();
        foreach (var endpoint in bench.Endpoints.Where(endpoint => !Open.Contains(Name(endpoint))))
        {
            using var visitor = bench.Visit();
            var isSent = MethodOf(endpoint) == "POST";
            var page = isSent ? await visitor.PostAsync(bench.Filled(endpoint), []) : await visitor.GetAsync(bench.Filled(endpoint));
            Assert.True(
                isSent ? page.Status == HttpStatusCode.Unauthorized : page.Status == HttpStatusCode.SeeOther && page.Location!.StartsWith("/sign-in", StringComparison.Ordinal),
                $"{Name(endpoint)} answers {page.Status}.");
            Assert.DoesNotContain("oven-7", page.Html, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("reader", 0)]
    [InlineData("checker", 1)]
    public async Task Who_enters_nothing_is_refused_at_every_form_of_entries(string role, int allowed)
    {
        await using var bench = await OpenedBench.StartAsync();
        bench.Add("Noor Haddad", RolePolicy.OfWord(role)!.Value);
        using var visitor = await bench.VisitAsync("Noor Haddad");
        var taken = 0;
        foreach (var endpoint in bench.Endpoints.Where(endpoint => MethodOf(endpoint) == "POST" && !Open.Contains(Name(endpoint)) && !Own.Contains(Name(endpoint))))
        {
            var page = await visitor.PostAsync(bench.Filled(endpoint), []);
            if (page.Status == HttpStatusCode.Forbidden)
                Assert.Contains("Not for your role", page.Text, StringComparison.Ordinal);
            else
                taken++;
        }

        Assert.Equal(allowed, taken);
    }

    [Fact]
    public async Task An_address_mapped_without_a_role_lets_nobody_in()
    {
        await using var bench = await OpenedBench.StartAsync(stray: "/stray");
        bench.Add("Ida Brandt", AccessRole.Builder);
        using var visitor = await bench.VisitAsync("Ida Brandt");
        var page = await visitor.GetAsync("/stray");
        Assert.Equal(HttpStatusCode.Forbidden, page.Status);
        Assert.DoesNotContain("stray data", page.Html, StringComparison.Ordinal);
    }

    private static string[] NamesOf(OpenedBench bench, Permission permission) =>
        [.. bench.Endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<NeedsPermission>()?.Permission == permission).Select(Name).Order(StringComparer.Ordinal)];

    private static string Name(RouteEndpoint endpoint) => $"{MethodOf(endpoint)} /{endpoint.RoutePattern.RawText!.TrimStart('/')}";

    private static string MethodOf(RouteEndpoint endpoint) => endpoint.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods[0] ?? "GET";
}
